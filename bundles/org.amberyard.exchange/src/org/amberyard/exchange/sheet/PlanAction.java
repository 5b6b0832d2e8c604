package org.amberyard.exchange.sheet;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a replacement schedule has happen to a bus. */
enum PlanAction {
    /** Another bus takes its place. */
    REPLACE("replace", "replacement", "buy", "purchase", "acquire", "order", "new", "electrify", "swap"),
    /** It goes, and no bus takes its place. */
    RETIRE("retire", "retirement", "sell", "sale", "scrap", "dispose", "disposal", "surplus", "auction", "remove"),
    /** It stays for all years. */
    KEEP("keep", "hold", "stay", "stays", "no");

    /** The words for a message. */
    static final String WORDS = "replace, retire or keep";

    private final List<String> words;

    PlanAction(String... words) {
        this.words = List.of(words);
    }

    /** The action that a text begins with: {@code Buy electric} is a replacement. */
    static Optional<PlanAction> of(String text) {
        String first = text.strip().toLowerCase(Locale.ROOT).split("[^a-z]+", 2)[0];
        return Arrays.stream(values()).filter(a -> a.words.contains(first)).findFirst();
    }
}
