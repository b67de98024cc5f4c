package squaresheet.verify;

import java.util.List;

/**
 * Workbooks in order that look as if they were not: numbers typed among formulas, charges that are not quantity times price,
 * rates in the column of amounts. Made up for these tests; that estimators write such is common practice, no source.
 */
final class CleanLayouts {

  private CleanLayouts() {}

  /**
   * A workbook somebody might have.
   *
   * @param name how it is laid out
   * @param sheets each as {@code Name}, then a line for each row, cells parted by bars
   */
  record Layout(String name, List<String> sheets) {

    @Override
    public String toString() {
      return name;
    }
  }

  private static Layout layout(String name, String... sheets) {
    return new Layout(name, List.of(sheets));
  }

  static final List<Layout> ALL = List.of(
      layout("plain factors typed beside areas by formula", """
          Roof
          Plane|Eave|Run|Plan area|Factor|Roof area|Squares
          Front|42|14|=B2*C2|1.118|=D2*E2|=F2/100
          Back|42|14|=B3*C3|1.118|=D3*E3|=F3/100
          Garage|24|12|=B4*C4|1.054|=D4*E4|=F4/100
          Porch|16|8|=B5*C5|1.054|=D5*E5|=F5/100
          Total|||=SUM(D2:D5)||=SUM(F2:F5)|=SUM(G2:G5)"""),
      layout("factors typed in the column of the products", """
          Price build-up
          Step|Base|Factor|Result
          Material|6120|1|=B2*C2
          Waste|=D2|1.12|=B3*C3
          Freight|=D3|1.03|=B4*C4
          Overhead|=D4|1.1|=B5*C5
          Steepness|=D5|1.25|1.25
          Profit|=D5|1.15|=B7*C7
          Price|||=D7*D6"""),
      layout("minimum charges by MAX in some rows", """
          Bid
          Item|Qty|Unit|Price|Amount
          Shingles|54|bundle|39.5|=B2*D2
          Starter|4|bundle|44|=B3*D3
          Dump fee|2|load|95|=MAX(250,B4*D4)
          Crane|1|hour|140|=MAX(420,B5*D5)
          Nails|3|box|46|=B6*D6
          Total||||=SUM(E2:E6)"""),
      layout("minimum charges typed, and said", """
          Bid
          Item|Qty|Price|Amount|Remark
          Tear-off|21.4|48|=B2*C2|
          Shingles|21.4|118|=B3*C3|
          Flashing|2|62|250|minimum charge
          Vents|6|38|=B5*C5|
          Haul|1|180|=B6*C6|
          Total|||=SUM(D2:D6)|"""),
      layout("a tax rate in the column of amounts", """
          Quote
          Item|Qty|Price|Amount
          Shingles|54|39.5|=B2*C2
          Felt|5|78|=B3*C3
          Cap|5|62|=B4*C4
          Sales tax rate|||0.0725
          Tax|||=ROUND(SUM(D2:D4)*D5,2)
          Total|||=SUM(D2:D4)+D6"""),
      layout("rates in a row between sums, across", """
          Houses
          |House|Garage|Shed|All
          Material|4200|1310|640|=SUM(B2:D2)
          Labour|2600|820|410|=SUM(B3:D3)
          Sum|=B2+B3|=C2+C3|=D2+D3|=SUM(B4:D4)
          Markup|0.2|0.2|0.25|
          Tax rate|0.06|0.06|0.06|
          Price|=B4*(1+B5)|=C4*(1+C5)|=D4*(1+D5)|=SUM(B7:D7)
          With tax|=B7*(1+B6)|=C7*(1+C6)|=D7*(1+D6)|=SUM(B8:D8)"""),
      layout("allowances typed among lines", """
          Estimate
          Item|Qty|Unit|Price|Amount
          Laminated shingles|64|bundle|36.8|=B2*D2
          Underlayment|6|roll|82|=B3*D3
          Allowance for rotten deck|1|sum|600|600
          Allowance for gutters||sum||350
          Ridge vent|42|ft|4.1|=B6*D6
          Total||||=SUM(E2:E6)"""),
      layout("an allowance below its price, agreed", """
          Estimate
          Item|Qty|Price|Amount|Note
          Shingles|64|36.8|=B2*C2|
          Felt|6|82|=B3*C3|
          Chimney|1|480|400|agreed with owner
          Vents|4|41|=B5*C5|
          Total|||=SUM(D2:D5)|"""),
      layout("a measured area among worked-out ones", """
          Areas
          Plane|Length|Width|Area (sf)|Squares
          A|40|15.65|=B2*C2|=D2/100
          B|40|15.65|=B3*C3|=D3/100
          C|22|12.3|281.4|=D4/100
          D|16|9|=B5*C5|=D5/100
          Total|||=SUM(D2:D5)|=SUM(E2:E5)"""),
      layout("rounded up by hand for ordering", """
          Order
          Item|Need|Pack|Packs
          Shingles|63.4|1|64
          Felt|5.2|1|6
          Starter|3.7|1|4
          Cap|4.6|1|5"""),
      layout("rounded up by formula, one by hand", """
          Order
          Item|Squares|Per square|Packs
          Shingles|21.4|3|=ROUNDUP(B2*C2,0)
          Felt|21.4|0.25|=ROUNDUP(B3*C3,0)
          Ice|3.2|0.5|3
          Cap|21.4|0.2|=ROUNDUP(B5*C5,0)
          Nails|21.4|0.07|=ROUNDUP(B6*C6,0)"""),
      layout("waste of its own in one row", """
          Gross
          Plane|Squares|Gross squares
          Front|6.3|=B2*1.1
          Back|6.3|=B3*1.1
          Turret|1.4|=B4*1.25
          Porch|1.2|=B5*1.1
          Total|=SUM(B2:B5)|=SUM(C2:C5)"""),
      layout("a price list with breaks typed in", """
          Prices
          Item|List|Rebate|Net
          Shingles|41.2|0.1|=B2*(1-C2)
          Felt|86|0.1|=B3*(1-C3)
          Nails|46|0|46
          Vent|52|0.05|=B5*(1-C5)
          Drip edge|9.4|0.1|=B6*(1-C6)"""),
      layout("hours with a fixed trip charge", """
          Crew
          Work|Hours|Rate|Cost
          Strip|18|42|=B2*C2
          Lay|31|46|=B3*C3
          Trip|0|0|85
          Clean|4|38|=B5*C5
          Sum|=SUM(B2:B5)||=SUM(D2:D5)"""),
      layout("areas typed, squares by formula, one roof for itself", """
          Roofs
          Roof|Plan area|Pitch|Factor|Roof area
          Main|1180|6|1.118|1319.2
          Wing|420|6|1.118|469.6
          Porch|160|3|1.031|164.9
          Total|=SUM(B2:B4)|||=SUM(E2:E4)"""),
      layout("lengths bought in whole sticks", """
          Metal
          Run|Feet|Stick (ft)|Sticks|Price|Amount
          Eave|84|10|=ROUNDUP(B2/C2,0)|11.2|=D2*E2
          Rake|61|10|=ROUNDUP(B3/C3,0)|11.2|=D3*E3
          Valley|17|10|2|24|=D4*E4
          Wall|12|10|=ROUNDUP(B5/C5,0)|9.6|=D5*E5
          Total|=SUM(B2:B5)||||=SUM(F2:F5)"""),
      layout("payments, the last one the rest", """
          Payments
          When|Share|Amount
          Price||11840.5
          At signing|0.3|=ROUND(B3*$C$2,2)
          On delivery|0.4|=ROUND(B4*$C$2,2)
          At the end|0.3|=C2-C3-C4"""),
      layout("options priced beside the job", """
          Quote
          Item|Qty|Price|Amount
          Roof|21.4|420|=B2*C2
          Gutters|84|9.5|=B3*C3
          Option: skylight|1|980|
          Option: copper|17|84|
          Snow guards|30|12|=B6*C6
          Total|||=D2+D3+D6"""));
}
