package org.amberyard.report.document;

import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFRun;

/** Words in a paragraph of a word processor. */
final class DocxText {
    private DocxText() {
    }

    /** Sets the style and adds words, tabs among them. */
    static XWPFParagraph add(XWPFParagraph paragraph, String style, String text) {
        paragraph.setStyle(style);
        XWPFRun run = paragraph.createRun();
        String[] parts = text.split("\t", -1);
        for (int i = 0; i < parts.length; i++) {
            if (i > 0) {
                run.addTab();
            }
            run.setText(parts[i]);
        }
        return paragraph;
    }

    /** Adds words in bold. */
    static void addBold(XWPFParagraph paragraph, String style, String text) {
        add(paragraph, style, text).getRuns().forEach(r -> r.setBold(true));
    }
}
