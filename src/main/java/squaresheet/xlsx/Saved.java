package squaresheet.xlsx;

import java.nio.file.Path;
import java.util.Optional;

/**
 * A file that was written whole.
 *
 * @param file the file
 * @param previous the copy of what was there before, where there was something and it was kept
 */
public record Saved(Path file, Optional<Path> previous) {}
