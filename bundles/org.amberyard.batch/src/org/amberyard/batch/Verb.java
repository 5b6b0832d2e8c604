package org.amberyard.batch;

import java.io.IOException;
import java.util.Set;

/** One thing that the program does without a window. */
interface Verb {

    /** Word on the command line. */
    String name();

    /** What follows the word. */
    String usage();

    /** What it does, in a sentence. */
    String summary();

    /** Options that take a value, beside those of every verb. */
    Set<String> options();

    /** Options that take no value, beside those of every verb. */
    default Set<String> flags() {
        return Set.of();
    }

    /**
     * Does it.
     *
     * @return exit code
     * @throws WrongUse when the arguments do not fit
     * @throws IOException when a file cannot be written
     */
    int run(Arguments arguments, Console console) throws WrongUse, IOException;
}
