package org.amberyard.report.document;

import java.math.BigInteger;
import org.apache.poi.wp.usermodel.HeaderFooterType;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFFooter;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTBody;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageMar;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTPageSz;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTSectPr;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.STPageOrientation;

/** Pages of a word processor: upright or in landscape, what every page says at head and foot. */
final class DocxPages {
    /** Twentieths of a point in an inch. */
    static final int INCH = 1440;
    private static final int POINT = 20;
    private static final int MARGIN = 1_152;
    private static final int WIDE_MARGIN = 864;

    private final XWPFDocument docx;
    private final Paper paper;
    private final int marginAbove;
    private boolean wide;
    private boolean breaksBefore;

    DocxPages(XWPFDocument docx, Paper paper, TextSetting setting) {
        this.docx = docx;
        this.paper = paper;
        this.marginAbove = (int) Math.round(INCH * setting.marginInches());
    }

    /** Width of the text, twentieths of a point. */
    int textWidth(boolean wide) {
        return (int) Math.round(POINT * paper.textWidth(wide));
    }

    /**
     * Head and foot of all pages.
     *
     * @param turned true where the first page is in landscape
     */
    void start(String running, String mark, boolean turned) {
        wide = turned;
        XWPFFooter footer = docx.createFooter(HeaderFooterType.DEFAULT);
        // hard spaces keep the number of the page on one line, however long the rest is
        XWPFParagraph line = footer.createParagraph();
        DocxText.add(line, "Footer", running + "  ·  Page\u00a0");
        line.getCTP().addNewFldSimple().setInstr("PAGE");
        DocxText.add(line, "Footer", "\u00a0of\u00a0");
        line.getCTP().addNewFldSimple().setInstr("NUMPAGES");
        if (!mark.isEmpty()) {
            DocxText.add(docx.createHeader(HeaderFooterType.DEFAULT).createParagraph(), "Header", mark);
        }
    }

    /** Turns to the pages of a section: another orientation starts a part of the file of its own. */
    void turn(Section section) {
        breaksBefore = section.newPage() && section.wide() == wide;
        if (section.wide() != wide) {
            CTSectPr done = docx.createParagraph().getCTP().addNewPPr().addNewSectPr();
            done.set(body().copy());
            size(done);
            wide = section.wide();
        }
    }

    /** True once where the next paragraph must break the page. */
    boolean takeBreak() {
        boolean due = breaksBefore;
        breaksBefore = false;
        return due;
    }

    /** Ends the last part. */
    void end() {
        size(body());
    }

    private CTSectPr body() {
        CTBody body = docx.getDocument().getBody();
        return body.isSetSectPr() ? body.getSectPr() : body.addNewSectPr();
    }

    private void size(CTSectPr part) {
        CTPageSz size = part.isSetPgSz() ? part.getPgSz() : part.addNewPgSz();
        BigInteger shortSide = BigInteger.valueOf(Math.round(POINT * paper.shortSide()));
        BigInteger longSide = BigInteger.valueOf(Math.round(POINT * paper.longSide()));
        size.setW(wide ? longSide : shortSide);
        size.setH(wide ? shortSide : longSide);
        size.setOrient(wide ? STPageOrientation.LANDSCAPE : STPageOrientation.PORTRAIT);
        CTPageMar margin = part.isSetPgMar() ? part.getPgMar() : part.addNewPgMar();
        BigInteger side = BigInteger.valueOf(wide ? WIDE_MARGIN : MARGIN);
        margin.setLeft(side);
        margin.setRight(side);
        margin.setTop(BigInteger.valueOf(marginAbove));
        margin.setBottom(BigInteger.valueOf(marginAbove));
        margin.setHeader(BigInteger.valueOf(Math.min(INCH / 2, marginAbove / 2)));
        margin.setFooter(BigInteger.valueOf(Math.min(INCH / 2, marginAbove / 2)));
        margin.setGutter(BigInteger.ZERO);
    }
}
