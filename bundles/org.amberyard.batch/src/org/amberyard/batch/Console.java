package org.amberyard.batch;

import java.io.PrintStream;
import java.nio.file.Path;

/**
 * Where a command runs.
 *
 * @param folder the caller's working folder
 * @param out for results
 * @param err for everything else
 */
record Console(Path folder, PrintStream out, PrintStream err) {
}
