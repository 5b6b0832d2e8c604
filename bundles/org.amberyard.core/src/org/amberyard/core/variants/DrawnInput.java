package org.amberyard.core.variants;

import java.util.Optional;
import org.amberyard.core.whatif.SortedDraws;

/**
 * A field that an uncertain input moves, over the draws, in the units of the study.
 *
 * @param input name of the uncertain input
 * @param elements names of the elements that hold the field, as far as they hold the same now
 * @param field its label
 * @param unit symbol of its unit; blank for a plain number or a word
 * @param now what the study holds
 * @param values what is drawn; empty for a choice among words
 * @param words how often each word is drawn; blank for a number
 */
public record DrawnInput(String input, String elements, String field, String unit, String now, Optional<SortedDraws> values, String words) {
}
