package org.amberyard.core.variants;

import java.util.List;

/** The inputs that vary, for tables and charts. */
public interface VariedInputs {

    /** Their names. */
    List<String> names();

    /** Value of an input in words: its number, or the word of a choice. */
    String words(int input, double value);
}
