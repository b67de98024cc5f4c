package squaresheet.job;

import squaresheet.estimate.PriceList;
import squaresheet.estimate.Rates;
import squaresheet.estimate.Terms;
import squaresheet.product.Catalogue;
import squaresheet.takeoff.Rulebook;

/**
 * What a company brings to every job.
 *
 * @param catalogue the products it buys
 * @param rulebook the rules it takes off by
 * @param prices what the products cost
 * @param rates what the work costs
 * @param terms what it puts on the cost, and how it is paid
 */
public record Company(
    Catalogue catalogue, Rulebook rulebook, PriceList prices, Rates rates, Terms terms) {}
