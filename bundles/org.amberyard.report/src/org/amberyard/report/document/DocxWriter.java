package org.amberyard.report.document;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import org.amberyard.model.io.SteadyZip;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.xmlbeans.XmlException;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTStyle;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.CTStyles;
import org.openxmlformats.schemas.wordprocessingml.x2006.main.StylesDocument;

/** Writes a document for word processors: headings, captions and lists by styles, tables whose heads repeat. */
final class DocxWriter {
    private final Document document;
    private final XWPFDocument docx = new XWPFDocument();
    private final DocxPages pages;
    private final DocxTables tables;
    private final DocxFigures figures;
    private final DocxPlaces places = new DocxPlaces();
    /** Name of the place of the table that comes next; empty where it has none. */
    private String here = "";

    private DocxWriter(Document document) {
        this.document = document;
        this.pages = new DocxPages(docx, document.paper(), document.setting());
        this.tables = new DocxTables(docx, pages);
        this.figures = new DocxFigures(docx, document.paper().figureWidth());
    }

    static byte[] bytes(Document document) throws IOException {
        DocxWriter writer = new DocxWriter(document);
        try (writer.docx) {
            return writer.written();
        }
    }

    private byte[] written() throws IOException {
        addStyles();
        pages.start(document.running(), document.mark(), document.startsWide());
        addTitle();
        for (int i = 0; i < document.sections().size(); i++) {
            pages.turn(document.sections().get(i));
            addSection(i, document.sections().get(i));
        }
        pages.end();
        OfficeProperties.set(docx.getProperties(), document.title(), document.subtitle());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        docx.write(out);
        return SteadyZip.of(out.toByteArray());
    }

    private void addStyles() throws IOException {
        CTStyles styles = styles(HtmlText.resource("styles.xml"));
        String others = document.setting().styles();
        if (!others.isEmpty()) {
            Map<String, CTStyle> instead = styles(others).getStyleList().stream().collect(Collectors.toMap(CTStyle::getStyleId, s -> s));
            styles.getStyleList().stream().filter(s -> instead.containsKey(s.getStyleId())).forEach(s -> s.set(instead.get(s.getStyleId())));
        }
        docx.createStyles().setStyles(styles);
    }

    private static CTStyles styles(String xml) throws IOException {
        try {
            return StylesDocument.Factory.parse(new ByteArrayInputStream(xml.getBytes(StandardCharsets.UTF_8))).getStyles();
        } catch (XmlException e) {
            throw new IOException("The styles of documents cannot be read", e);
        }
    }

    private void addTitle() {
        add("Title", document.title());
        if (!document.subtitle().isEmpty()) {
            add("Subtitle", document.subtitle());
        }
        if (!document.mark().isEmpty()) {
            add("Caution", document.mark());
        }
        if (!document.facts().isEmpty()) {
            tables.addFacts(document.facts());
        }
    }

    private void addSection(int place, Section section) throws IOException {
        if (!section.heading().isEmpty()) {
            places.mark(add("Heading1", section.heading()), Document.place(place));
        }
        for (int i = 0; i < section.blocks().size(); i++) {
            here = Document.place(place, i);
            add(section.blocks().get(i), section.wide());
        }
    }

    private void add(Block block, boolean wide) throws IOException {
        if (block instanceof Block.Paragraph paragraph) {
            add(paragraph.strong() ? "Strong" : "Normal", paragraph.text());
        } else if (block instanceof Block.Bullets bullets) {
            bullets.items().forEach(i -> add("ListBullet", "•\t" + i));
        } else if (block instanceof Block.Caution caution) {
            add("Caution", caution.text());
        } else if (block instanceof Block.Figure figure) {
            figures.add(figure);
            add("FigureCaption", figure.caption());
        } else if (block instanceof Block.Contents) {
            document.contents().forEach(e -> places.lead(docx.createParagraph(), e));
        } else if (block instanceof Block.OnSheet longTable) {
            add("Normal", longTable.words());
        } else if (block instanceof Block.Condensed condensed) {
            condensed.onPaper().forEach(t -> add(t, wide, condensed.setting()));
        } else if (block instanceof DataTable table) {
            add(table, wide, RowSetting.OPEN);
        }
    }

    private void add(DataTable table, boolean wide, RowSetting setting) {
        places.mark(add("Caption", table.title()), here);
        here = "";
        if (!table.mark().isEmpty()) {
            add("Strong", table.mark());
        }
        tables.add(table, wide, setting);
        table.notes().forEach(n -> add("TableNote", n));
    }

    private XWPFParagraph add(String style, String text) {
        XWPFParagraph paragraph = DocxText.add(docx.createParagraph(), style, text);
        if (pages.takeBreak()) {
            paragraph.setPageBreak(true);
        }
        return paragraph;
    }
}
