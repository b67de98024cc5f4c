package squaresheet.takeoff;

import squaresheet.product.Product;
import squaresheet.units.Count;

/**
 * A product to buy.
 *
 * @param rule the rule that asked for it
 * @param product the product
 * @param packs how many packs, 1 or more
 */
public record Order(Rule rule, Product product, Count packs) {}
