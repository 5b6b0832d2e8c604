package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.amberyard.core.plan.BusDay;
import org.amberyard.core.plan.DayKind;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

class ChartExportTest {
    private static final StudyResult RESULT = SampleDistrict.evaluated(SampleDistrict.small());

    static List<Function<ChartTheme, Chart>> charts() {
        return List.of(t -> AnnualCostChart.of(RESULT, UnitSystem.US, t),
                t -> CumulativeCostChart.of(RESULT, UnitSystem.US, t), t -> RangeMarginChart.of(RESULT, UnitSystem.US, t),
                t -> RangeHeatMap.of(RESULT, UnitSystem.US, t), t -> ChargeThroughDayChart.of(RESULT, 1,
                        new BusDay.Asked(0, 8, 0, false, DayKind.COLDEST), UnitSystem.US, t),
                t -> ConsumptionTemperatureChart.of(RESULT, 0, UnitSystem.US, t),
                t -> PackCapacityChart.of(RESULT, 1, OptionalInt.of(0), t), t -> EnergyWaterfallChart.of(RESULT, 0, 1, UnitSystem.US, t));
    }

    private static byte[] png(Chart chart) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ChartExport.png(chart, bytes, 900, 400, 2);
        return bytes.toByteArray();
    }

    @ParameterizedTest
    @MethodSource("charts")
    void aPngHasItsSizeAndColoursAndCarriesItsText(Function<ChartTheme, Chart> build) throws IOException {
        Chart chart = build.apply(ChartTheme.dark());
        byte[] bytes = png(chart);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(bytes));
        assertEquals(1800, image.getWidth());
        assertEquals(800, image.getHeight());
        assertEquals(ChartTheme.dark().background().getRGB(), image.getRGB(2, 2));
        long colours = Arrays.stream(image.getRGB(0, 0, 1800, 800, null, 0, 1800)).distinct().count();
        assertTrue(colours > 20, "Only " + colours + " colours");
        assertTrue(new String(bytes, StandardCharsets.UTF_8).contains(chart.textAlternative()));
        assertArrayEquals(bytes, png(build.apply(ChartTheme.dark())));
    }

    @ParameterizedTest
    @MethodSource("charts")
    void aPdfIsOnePageOfVectorsAndSaysWhatItShows(Function<ChartTheme, Chart> build) throws IOException {
        Chart chart = build.apply(ChartTheme.light());
        byte[] bytes = pdf(chart);
        try (PDDocument document = Loader.loadPDF(bytes)) {
            assertEquals(1, document.getNumberOfPages());
            assertEquals(720, document.getPage(0).getMediaBox().getWidth(), 0.01);
            assertEquals(chart.title(), document.getDocumentInformation().getTitle());
            assertEquals(chart.textAlternative(), document.getDocumentInformation().getSubject());
            PDFormXObject drawing = (PDFormXObject) document.getPage(0).getResources()
                    .getXObject(document.getPage(0).getResources().getXObjectNames().iterator().next());
            for (COSName name : drawing.getResources().getXObjectNames()) {
                assertFalse(drawing.getResources().isImageXObject(name), "no pixels");
            }
            assertTrue(drawing.getContentStream().toByteArray().length > 5000, "lines and letters");
        }
        assertArrayEquals(bytes, pdf(build.apply(ChartTheme.light())));
    }

    private static byte[] pdf(Chart chart) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ChartExport.pdf(chart, bytes, 900, 400);
        return bytes.toByteArray();
    }

    @ParameterizedTest
    @MethodSource("charts")
    void anSvgIsWellFormedSaysWhatItShowsAndNeverChanges(Function<ChartTheme, Chart> build) throws Exception {
        Chart chart = build.apply(ChartTheme.light());
        String svg = ChartExport.svg(chart, 900, 400);
        assertTrue(svg.startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<svg xmlns=\"http://www.w3.org/2000/svg\" "), svg);
        Document document = parsed(svg);
        assertEquals("svg", document.getDocumentElement().getTagName());
        assertEquals(chart.title(), document.getElementsByTagName("title").item(0).getTextContent());
        assertEquals(chart.textAlternative(), document.getElementsByTagName("desc").item(0).getTextContent());
        assertEquals("title", document.getDocumentElement().getFirstChild().getNodeName());
        assertEquals("desc", document.getDocumentElement().getFirstChild().getNextSibling().getNodeName());
        assertEquals(svg, ChartExport.svg(build.apply(ChartTheme.light()), 900, 400));
    }

    @ParameterizedTest
    @MethodSource("charts")
    void anSvgHasItsSizeWordsAndIdsOfItsOwn(Function<ChartTheme, Chart> build) throws Exception {
        Chart chart = build.apply(ChartTheme.light());
        String svg = ChartExport.svg(chart, 900, 400);
        Document document = parsed(svg);
        assertEquals("900", document.getDocumentElement().getAttribute("width"));
        assertEquals("400", document.getDocumentElement().getAttribute("height"));
        assertEquals("0 0 900 400", document.getDocumentElement().getAttribute("viewBox"));
        assertEquals(chart.title(), document.getElementsByTagName("text").item(0).getTextContent(), "words, not outlines");
        NodeList elements = document.getElementsByTagName("*");
        List<String> ids = IntStream.range(0, elements.getLength()).mapToObj(i -> ((Element) elements.item(i)).getAttribute("id"))
                .filter(id -> !id.isEmpty()).toList();
        assertTrue(ids.contains(chart.name() + "_clipPath1"), ids.toString());
        assertTrue(ids.stream().allMatch(id -> id.startsWith(chart.name())), ids.toString());
        assertEquals(ids.size(), Set.copyOf(ids).size());
        assertFalse(svg.contains("<!--"));
        assertFalse(Pattern.compile("[0-9][.][0-9]{4}").matcher(svg).find(), "coordinates have three decimals");
    }

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance().newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    /** Arabic in Egypt writes other digits; files must not depend on where they are made. */
    @ParameterizedTest
    @MethodSource("charts")
    void aPictureIsTheSameInEveryLocale(Function<ChartTheme, Chart> build) throws IOException {
        Locale own = Locale.getDefault();
        String here = ChartExport.svg(build.apply(ChartTheme.light()), 900, 400);
        try {
            Locale.setDefault(new Locale("ar", "EG"));
            assertEquals(here, ChartExport.svg(build.apply(ChartTheme.light()), 900, 400));
        } finally {
            Locale.setDefault(own);
        }
    }
}
