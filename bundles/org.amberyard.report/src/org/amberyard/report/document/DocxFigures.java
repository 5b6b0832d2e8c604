package org.amberyard.report.document;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.xml.namespace.QName;
import org.amberyard.charts.ChartExport;
import org.apache.poi.common.usermodel.PictureType;
import org.apache.poi.openxml4j.exceptions.InvalidFormatException;
import org.apache.poi.util.Units;
import org.apache.poi.xwpf.usermodel.XWPFDocument;
import org.apache.poi.xwpf.usermodel.XWPFParagraph;
import org.apache.poi.xwpf.usermodel.XWPFPicture;
import org.apache.xmlbeans.XmlCursor;
import org.openxmlformats.schemas.drawingml.x2006.main.CTBlip;
import org.openxmlformats.schemas.drawingml.x2006.wordprocessingDrawing.CTInline;

/** Charts of a word processor: as vectors, beside a picture for programs that know no vectors. */
final class DocxFigures {
    private static final double SCALE = 2;
    private static final String DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/main";
    private static final String VECTOR = "http://schemas.microsoft.com/office/drawing/2016/SVG/main";
    private static final String RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    /** Name by which word processors know the extension of a picture by its vectors. */
    private static final String VECTOR_EXTENSION = "{96DAC541-7B7A-43D3-8B79-37D633B846F1}";

    private final XWPFDocument docx;
    private final double width;

    /** @param width width of charts, points */
    DocxFigures(XWPFDocument docx, double width) {
        this.docx = docx;
        this.width = width;
    }

    void add(Block.Figure figure) throws IOException {
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        ChartExport.png(figure.chart(), png, Block.Figure.WIDTH, figure.chartHeight(), SCALE);
        ByteArrayOutputStream svg = new ByteArrayOutputStream();
        ChartExport.svg(figure.chart(), svg, Block.Figure.WIDTH, figure.chartHeight());
        XWPFParagraph paragraph = docx.createParagraph();
        paragraph.setStyle("Figure");
        try {
            XWPFPicture picture = paragraph.createRun().addPicture(new ByteArrayInputStream(png.toByteArray()), PictureType.PNG,
                    figure.chart().name() + ".png", Units.toEMU(width), Units.toEMU(width * figure.height()));
            picture.getCTPicture().getNvPicPr().getCNvPr().setDescr(figure.chart().textAlternative());
            addVectors(picture.getCTPicture().getBlipFill().getBlip(), docx.addPictureData(svg.toByteArray(), PictureType.SVG));
        } catch (InvalidFormatException e) {
            throw new IOException("The chart “" + figure.chart().title() + "” cannot be put into a document", e);
        }
        CTInline inline = paragraph.getRuns().get(0).getCTR().getDrawingArray(0).getInlineArray(0);
        inline.getDocPr().setDescr(figure.chart().textAlternative());
        inline.getDocPr().setTitle(figure.chart().title());
    }

    private static void addVectors(CTBlip blip, String relation) {
        try (XmlCursor cursor = blip.newCursor()) {
            cursor.toEndToken();
            cursor.beginElement(new QName(DRAWING, "extLst", "a"));
            cursor.beginElement(new QName(DRAWING, "ext", "a"));
            cursor.insertAttributeWithValue("uri", VECTOR_EXTENSION);
            cursor.beginElement(new QName(VECTOR, "svgBlip", "asvg"));
            cursor.insertNamespace("asvg", VECTOR);
            cursor.insertAttributeWithValue(new QName(RELATION, "embed", "r"), relation);
        }
    }
}
