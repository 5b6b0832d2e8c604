package org.amberyard.core.variants;

import java.util.List;
import java.util.OptionalInt;

/** The inputs that vary, for tables and charts. */
public interface VariedInputs {

    /** Their names. */
    List<String> names();

    /** Names of the groups of inputs that are varied together. */
    List<String> groups();

    /** Name of an input, or behind the inputs of a group. */
    default String name(int place) {
        int inputs = names().size();
        return place < inputs ? names().get(place) : groups().get(place - inputs);
    }

    /** Value of an input in words: its number, or the word of a choice. */
    String words(int input, double value);

    /** Value of an input in the unit that the user sees, in full; not a number for a choice among words. */
    double shown(int input, double value);

    /** What such values are: a factor, or the unit of what is added to a field or stands in it; blank for words. */
    String unit(int input);

    /** The number that draws begin with: the same seed gives the same draws. */
    long seed();

    /** True for an input that takes any value of a range that has a length; between the values of a list there is nothing. */
    boolean varies(int input);

    /** Place of the input that is chosen for both ways of the grid of two inputs, which so has none; empty where that is not so. */
    default OptionalInt chosenTwice() {
        return OptionalInt.empty();
    }
}
