package squaresheet.binding;

import java.util.LinkedHashMap;
import java.util.Map;

/** The columns of the job workbook that are typed, by the meaning of the column and the defined name of its cells. */
final class JobTables {

  static final Map<String, Map<String, String>> ALL = new LinkedHashMap<>();

  static {
    ALL.put(
        "planes",
        columns(
            "plane=plane_name",
            "shape=plane_shape",
            "eave=eave_width",
            "up_slope=plane_up_slope",
            "top=plane_top",
            "offset=plane_offset",
            "pitch=pitch_rise",
            "measured=plane_measured"));
    ALL.put(
        "corners",
        columns("plane=corner_plane", "corner=corner_number", "x=corner_along", "y=corner_up"));
    ALL.put(
        "openings",
        columns(
            "opening=opening_name",
            "plane=opening_plane",
            "what=opening_what",
            "width=opening_width",
            "up_slope=opening_up_slope",
            "from_left=opening_from_left",
            "from_eave=opening_from_eave"));
    ALL.put(
        "edges",
        columns(
            "remarks=edge_name",
            "edge=edge_kind",
            "plane=edge_plane",
            "side=edge_side",
            "meets=edge_meets",
            "other_side=edge_other_side",
            "part=edge_opening",
            "taped=edge_taped",
            "other_taped=edge_other_taped"));
  }

  private JobTables() {}

  private static Map<String, String> columns(String... pairs) {
    Map<String, String> columns = new LinkedHashMap<>();
    for (String pair : pairs) {
      String[] parts = pair.split("=");
      columns.put(parts[0], parts[1]);
    }
    return columns;
  }
}
