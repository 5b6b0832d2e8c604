package org.amberyard.batch;

import java.io.PrintStream;
import java.nio.file.Path;
import org.amberyard.study.StudyEvaluator;

/**
 * Where and with what a command runs.
 *
 * @param folder the caller's working folder
 * @param out for results
 * @param err for everything else
 * @param evaluator for results of studies
 */
record Console(Path folder, PrintStream out, PrintStream err, StudyEvaluator evaluator) {
}
