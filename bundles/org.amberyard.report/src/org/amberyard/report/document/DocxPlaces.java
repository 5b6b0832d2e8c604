package org.amberyard.report.document;

import java.math.BigInteger;
import org.apache.poi.xwpf.usermodel.XWPFHyperlinkRun;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTBookmark;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTHyperlink;

/** Places of a word processor's document that lines of its contents lead to. */
final class DocxPlaces {
    private int marks;

    /** Marks a paragraph as a place; without a name it is none. */
    void mark(XWPFParagraph paragraph, String place) {
        if (place.isEmpty()) {
            return;
        }
        BigInteger id = BigInteger.valueOf(marks++);
        CTBookmark start = paragraph.getCTP().addNewBookmarkStart();
        start.setId(id);
        start.setName(place);
        paragraph.getCTP().addNewBookmarkEnd().setId(id);
    }

    /** Writes a line that leads to its place. */
    void lead(XWPFParagraph paragraph, Document.Entry entry) {
        paragraph.setStyle(entry.table() ? "EntryOfTable" : "Entry");
        CTHyperlink link = paragraph.getCTP().addNewHyperlink();
        link.setAnchor(entry.place());
        new XWPFHyperlinkRun(link, link.addNewR(), paragraph).setText(entry.words());
    }
}
