package squaresheet.binding;

import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;

/**
 * What a job is priced by.
 *
 * @param prices what products cost
 * @param rates hours and money by the unit of work
 * @param terms what is put on and taken off, and how it is paid
 */
record Pricing(PriceList prices, Rates rates, Terms terms) {}
