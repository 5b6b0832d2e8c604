package org.amberyard.report.papers;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.document.Document;

/** Documents that can be made from a study. */
public enum DocumentKind {
    /** Justification tables of a grant application. */
    GRANT("grant", "Justification tables for a grant", (in, progress) -> GrantSet.of(in)),
    /** Memo to the board. */
    BOARD("board", "Memo to the board", (in, progress) -> BoardMemo.of(in)),
    /** Load letter to the utility. */
    UTILITY("utility", "Load letter to the utility", (in, progress) -> UtilityLetter.of(in)),
    /** Calendar of the shop. */
    SHOP("shop", "Calendar of the shop", (in, progress) -> ShopPaper.of(in)),
    /** Methods, results and inputs. */
    APPENDIX("appendix", "Consultant's appendix", Appendix::of);

    private interface Maker {
        Document of(PaperInput in, Progress progress);
    }

    private final String word;
    private final String label;
    private final Maker maker;

    DocumentKind(String word, String label, Maker maker) {
        this.word = word;
        this.label = label;
        this.maker = maker;
    }

    /** Name on the command line. */
    public String word() {
        return word;
    }

    /** Name for people. */
    public String label() {
        return label;
    }

    /** The document. */
    public Document of(PaperInput in, Progress progress) {
        return maker.of(in, progress);
    }

    /** The kind of a word. */
    public static Optional<DocumentKind> of(String word) {
        return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
    }

    /** All words. */
    public static String words() {
        return Arrays.stream(values()).map(DocumentKind::word).collect(Collectors.joining(", "));
    }
}
