package org.amberyard.workbench.help;

import java.util.Arrays;
import java.util.Locale;

/**
 * A page of the help.
 *
 * @param id name by which the program finds it
 * @param group what it belongs to
 * @param title its title
 * @param text its text: lines that begin with {@code #} are headings, with {@code -} or a number points of a list, with four spaces
 *            formulas; all others paragraphs
 * @param also other words by which it is looked for
 */
record HelpTopic(String id, String group, String title, String text, String also) {

    /** True when all words of a search stand in it, or in what it is looked for by. */
    boolean has(String search) {
        String all = (title + " " + text + " " + also).toLowerCase(Locale.ROOT);
        return Arrays.stream(search.toLowerCase(Locale.ROOT).split("\\s+")).allMatch(all::contains);
    }
}
