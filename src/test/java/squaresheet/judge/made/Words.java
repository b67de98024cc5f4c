package squaresheet.judge.made;

import java.util.List;
import java.util.Map;
import java.util.Random;

/** The words that one contractor uses for the things of the trade; drawn, one half of them for tuning and the other never. */
final class Words {

  /** Word by word: the first half of each list is seen, the second unseen. Wordings are common practice, no source. */
  private static final Map<String, List<String>> ALL = Map.ofEntries(
      Map.entry(
          "plane",
          List.of("Plane", "Roof plane", "Section", "Area", "Slope", "Facet", "Side", "Roof part")),
      Map.entry(
          "eave",
          List.of(
              "Eave",
              "Eave length",
              "Width",
              "Length along eave",
              "Along eave",
              "Eave side",
              "Bottom",
              "Eave L")),
      Map.entry(
          "ridge",
          List.of(
              "Ridge",
              "Top",
              "Ridge side",
              "Upper length",
              "Top length",
              "Ridge L",
              "Along ridge",
              "Upper")),
      Map.entry(
          "up",
          List.of(
              "Slope length",
              "Up slope",
              "Rafter",
              "Rake length",
              "Eave to ridge",
              "Up the roof",
              "Slope dist.",
              "Rafter length")),
      Map.entry(
          "run",
          List.of(
              "Run",
              "Plan depth",
              "Level run",
              "Run (plan)",
              "Horizontal run",
              "Depth in plan",
              "Flat run",
              "Plan run")),
      Map.entry(
          "pitch",
          List.of(
              "Pitch",
              "Pitch x/12",
              "Rise /12",
              "Pitch (in 12)",
              "Rise in 12",
              "Slope x/12",
              "Pitch /12",
              "Rise per 12")),
      Map.entry(
          "factor",
          List.of(
              "Factor",
              "Pitch factor",
              "Slope factor",
              "Mult.",
              "Pitch mult.",
              "Slope mult.",
              "Multiplier",
              "Roof factor")),
      Map.entry(
          "planArea",
          List.of(
              "Plan area",
              "Plan",
              "Flat area",
              "Footprint area",
              "Level area",
              "Plan sq ft",
              "Area in plan",
              "Area flat")),
      Map.entry(
          "area",
          List.of(
              "Roof area",
              "Sloped area",
              "Area",
              "Area on slope",
              "True area",
              "Roof sq ft",
              "Surface",
              "Actual area")),
      Map.entry(
          "squares",
          List.of(
              "Squares",
              "Sq",
              "SQ",
              "Squares (100 sf)",
              "Sqs",
              "No. of squares",
              "SQs",
              "Roof squares")),
      Map.entry(
          "waste",
          List.of(
              "Waste",
              "Waste %",
              "Waste allowance",
              "Cut waste",
              "Add for waste",
              "Waste factor",
              "Allow waste",
              "Cutting waste")),
      Map.entry(
          "item",
          List.of(
              "Item",
              "Material",
              "Description",
              "What",
              "Line",
              "Product",
              "Work item",
              "Position")),
      Map.entry(
          "qty",
          List.of("Qty", "Quantity", "No.", "Order", "Count", "How many", "Need", "To order")),
      Map.entry(
          "unit", List.of("Unit", "Per", "U/M", "Units", "Unit of sale", "Sold by", "UoM", "Each")),
      Map.entry(
          "price",
          List.of(
              "Price",
              "Unit price",
              "Price each",
              "Cost each",
              "Unit cost",
              "Rate",
              "$ each",
              "Price/unit")),
      Map.entry(
          "amount",
          List.of(
              "Amount",
              "Total",
              "Extended",
              "Line total",
              "Cost",
              "Ext. price",
              "Sum",
              "Line amount")),
      Map.entry(
          "total",
          List.of(
              "Total",
              "Total price",
              "Contract price",
              "Bid total",
              "Grand total",
              "Price to customer",
              "Job total",
              "Total bid")),
      Map.entry(
          "tax",
          List.of(
              "Sales tax",
              "Tax",
              "Tax on material",
              "Sales tax on material",
              "State tax",
              "Material tax",
              "Tax (material)",
              "Sales tax, material")),
      Map.entry(
          "overhead",
          List.of(
              "Overhead",
              "Overhead %",
              "OH",
              "General overhead",
              "Office overhead",
              "O/H",
              "Company overhead",
              "Overheads")),
      Map.entry(
          "profit",
          List.of(
              "Profit",
              "Profit %",
              "Markup",
              "Add profit",
              "Profit on cost",
              "Mark-up",
              "Profit add",
              "Company profit")),
      Map.entry(
          "material",
          List.of(
              "Material",
              "Materials",
              "Material subtotal",
              "Total material",
              "Material cost",
              "Sum of material",
              "Materials total",
              "Mat. total")),
      Map.entry(
          "labor",
          List.of(
              "Labor",
              "Labor subtotal",
              "Total labor",
              "Labor cost",
              "Crew",
              "Labor total",
              "Sum of labor",
              "Lab. total")),
      Map.entry(
          "shingles",
          List.of(
              "Shingles",
              "Laminated shingles",
              "Field shingles",
              "Arch. shingles",
              "Shingle bundles",
              "Roof shingles",
              "Shingles, laminated",
              "Main shingles")),
      Map.entry(
          "starter",
          List.of(
              "Starter",
              "Starter strip",
              "Starter rolls",
              "Starter course",
              "Eave starter",
              "Starter pieces",
              "Starters",
              "Starter shingles")),
      Map.entry(
          "cap",
          List.of(
              "Ridge cap",
              "Hip and ridge",
              "Cap",
              "Hip & ridge cap",
              "Caps",
              "Ridge caps",
              "Hip/ridge",
              "Cap shingles")),
      Map.entry(
          "felt",
          List.of(
              "Underlayment",
              "Felt",
              "Synthetic underlayment",
              "Underlay rolls",
              "Roofing felt",
              "Synthetic felt",
              "Felt rolls",
              "Underlay")),
      Map.entry(
          "ice",
          List.of(
              "Ice barrier",
              "Ice membrane",
              "Ice and water barrier",
              "Eave membrane",
              "Ice rolls",
              "Ice membrane rolls",
              "Membrane",
              "Ice protection")),
      Map.entry(
          "metal",
          List.of(
              "Drip edge",
              "Edge metal",
              "Drip metal",
              "Eave metal",
              "Metal edge",
              "Drip",
              "Metal drip edge",
              "Edge flashing")),
      Map.entry(
          "nails",
          List.of(
              "Nails",
              "Coil nails",
              "Roofing nails",
              "Nail boxes",
              "Fasteners",
              "Nails, coil",
              "Nail coils",
              "Boxes of nails")),
      Map.entry(
          "install",
          List.of(
              "Install",
              "Lay shingles",
              "Labor install",
              "Roofing labor",
              "Shingling",
              "Install roof",
              "Laying",
              "Crew labor")),
      Map.entry(
          "tear",
          List.of(
              "Tear-off",
              "Strip old roof",
              "Remove old shingles",
              "Tear off",
              "Stripping",
              "Removal",
              "Strip",
              "Demo old roof")),
      Map.entry(
          "permit",
          List.of(
              "Permit",
              "Building permit",
              "Permit fee",
              "City permit",
              "Town permit",
              "Permits",
              "Permit cost",
              "Permit charge")),
      Map.entry(
          "dump",
          List.of(
              "Dumpster",
              "Disposal",
              "Container",
              "Dump fee",
              "Roll-off",
              "Haul away",
              "Bin",
              "Disposal bin")));

  private final Random random;
  private final boolean unseen;

  Words(Random random, boolean unseen) {
    this.random = random;
    this.unseen = unseen;
  }

  /** One of the words for a thing; the same workbook may ask again and be told another. */
  String of(String thing) {
    List<String> words = ALL.get(thing);
    int half = words.size() / 2;
    return words.get((unseen ? half : 0) + random.nextInt(half));
  }
}
