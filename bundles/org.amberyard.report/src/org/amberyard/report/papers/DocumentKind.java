package org.amberyard.report.papers;

import java.io.IOException;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.cashflow.CashFlowBook;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.DocumentFormat;

/** Documents that can be made from a study. */
public enum DocumentKind {
    /** Justification tables of a grant application. */
    GRANT("grant", "Justification tables for a grant", written((in, progress) -> GrantSet.of(in))),
    /** Memo to the board. */
    BOARD("board", "Memo to the board", written((in, progress) -> BoardMemo.of(in))),
    /** Load letter to the utility. */
    UTILITY("utility", "Load letter to the utility", written((in, progress) -> UtilityLetter.of(in))),
    /** Who stands where by year. */
    SCHEDULE("schedule", "Replacement schedule", written((in, progress) -> SchedulePaper.of(in))),
    /** Routes and electric types, for dispatch. */
    ROUTES("routes", "Route suitability list", written((in, progress) -> RouteListPaper.of(in))),
    /** Calendar of the shop. */
    SHOP("shop", "Calendar of the shop", written((in, progress) -> ShopPaper.of(in))),
    /** Methods, results and inputs. */
    APPENDIX("appendix", "Consultant's appendix", written(Appendix::of)),
    /** All plans as a workbook that computes; a workbook whatever formats are asked for. */
    CASH_FLOW("cash-flow", "Cash flow with formulas (a workbook)", (in, formats, progress) -> Map.of("cash-flow.xlsx",
            CashFlowBook.bytes(in.result(), in.system(), in.running("Cash flow"), in.choices().paper())));

    private interface Content {
        Document of(PaperInput in, Progress progress);
    }

    private interface Maker {
        Map<String, byte[]> files(PaperInput in, Set<DocumentFormat> formats, Progress progress) throws IOException;
    }

    private final String word;
    private final String label;
    private final Maker maker;

    DocumentKind(String word, String label, Maker maker) {
        this.word = word;
        this.label = label;
        this.maker = maker;
    }

    private static Maker written(Content content) {
        return (in, formats, progress) -> {
            Document document = content.of(in, progress.part(0, 1 + formats.size())).on(in.choices().paper());
            Map<String, byte[]> files = new LinkedHashMap<>();
            for (DocumentFormat format : DocumentFormat.values()) {
                if (formats.contains(format)) {
                    progress.at((1.0 + files.size()) / (1 + formats.size()));
                    files.put(document.name() + "." + format.ending(), format.write(document));
                }
            }
            return files;
        };
    }

    /** Name on the command line. */
    public String word() {
        return word;
    }

    /** Name for people. */
    public String label() {
        return label;
    }

    /** The files of the document by name. */
    Map<String, byte[]> files(PaperInput in, Set<DocumentFormat> formats, Progress progress) throws IOException {
        return maker.files(in, formats, progress);
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
