package org.amberyard.charts;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.ls.DOMImplementationLS;
import org.w3c.dom.ls.LSSerializer;

/** Draws a chart into an SVG document. Its ids begin with the chart's name, so that several fit into one page. */
final class SvgFile {
    private static final int COORDINATE_DECIMALS = 3;

    private SvgFile() {
    }

    /** One at a time: all drawings share one number format. */
    static synchronized String of(Chart chart, int width, int height) {
        Document document = newDocument();
        SVGGraphics2D graphics = new Graphics(context(document, chart.name()));
        graphics.setSVGCanvasSize(new Dimension(width, height));
        chart.chart().draw(graphics, new Rectangle2D.Double(0, 0, width, height));
        Element root = graphics.getRoot();
        root.setAttribute("xmlns", SVGGraphics2D.SVG_NAMESPACE_URI);
        root.setAttribute("xmlns:xlink", SVGGraphics2D.XLINK_NAMESPACE_URI);
        root.setAttribute("id", chart.name());
        root.setAttribute("viewBox", "0 0 " + width + " " + height);
        Element generic = (Element) root.getFirstChild();
        generic.removeAttribute("id");
        root.insertBefore(text(document, "title", chart.title()), generic);
        root.insertBefore(text(document, "desc", chart.textAlternative()), generic);
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + written(root) + "\n";
    }

    private static SVGGeneratorContext context(Document document, String name) {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        context.setPrecision(COORDINATE_DECIMALS);
        context.setIDGenerator(new SVGIDGenerator() {
            @Override
            public String generateID(String kind) {
                return name + "_" + super.generateID(kind);
            }
        });
        return context;
    }

    private static Document newDocument() {
        try {
            return DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().newDocument();
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Element text(Document document, String name, String text) {
        Element element = document.createElementNS(SVGGraphics2D.SVG_NAMESPACE_URI, name);
        element.setTextContent(text);
        return element;
    }

    private static String written(Node node) {
        DOMImplementationLS implementation = (DOMImplementationLS) node.getOwnerDocument().getImplementation();
        LSSerializer writer = implementation.createLSSerializer();
        writer.getDomConfig().setParameter("xml-declaration", false);
        writer.getDomConfig().setParameter("namespaces", false);
        writer.setNewLine("\n");
        return writer.writeToString(node);
    }

    /** Measures letters as vectors have them, not in whole pixels. */
    private static final class Graphics extends SVGGraphics2D {
        private final Graphics2D measuring = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();

        Graphics(SVGGeneratorContext context) {
            super(context, false);
            measuring.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        }

        @Override
        public FontMetrics getFontMetrics(Font font) {
            return measuring.getFontMetrics(font);
        }
    }
}
