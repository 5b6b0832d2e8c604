package org.amberyard.report.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.regex.Pattern;

/** A document as XHTML: of itself for a browser, and the source of the PDF. */
final class HtmlText {
    /** Of the text's width, as in the style sheet, with some room left for letters that are wider than is known. */
    private static final double FOOT_SHARE = 0.88 * 0.97;
    private static final double FOOT_PT = 7;
    private static final String FOOT_PARTS = " · ";
    private static final String NEW_LINE = "\\A ";
    /** What no line may part: words with digits and hyphens, such as numbers of buses, times of day, and units with a slash. */
    private static final Pattern IDENTIFIER =
            Pattern.compile("(?<![\\w-])(?=[\\w-]*\\d)\\w+(?:-\\w+)+(?![\\w-])|\\b\\d+:\\d\\d\\b|\\(?\\b\\p{L}+/\\p{L}+\\b\\)?");

    private final Document document;
    private final Function<Block.Figure, String> picture;
    private final boolean browsed;
    private final StringBuilder html = new StringBuilder();
    /** Name of the place of the table that comes next; empty where it has none. */
    private String here = "";

    /** @param browsed true for a page in a browser, where tables are read and copied one by one */
    private HtmlText(Document document, Function<Block.Figure, String> picture, boolean browsed) {
        this.document = document;
        this.picture = picture;
        this.browsed = browsed;
    }

    /**
     * The page for a browser.
     *
     * @param picture markup of a chart
     */
    static String page(Document document, Function<Block.Figure, String> picture) {
        return new HtmlText(document, picture, true).page("");
    }

    /**
     * The source of a PDF: the same page, with the bookmarks that the renderer asks for in its head.
     *
     * @param picture markup of a chart
     */
    static String source(Document document, Function<Block.Figure, String> picture) {
        return new HtmlText(document, picture, false).page(bookmarks(document));
    }

    /** Text with the signs of markup escaped; signs that no XML may hold are left out. */
    static String escaped(String text) {
        return text.replaceAll("[^\\u0009\\u000A\\u000D\\u0020-\\uD7FF\\uE000-\\uFFFD\\x{10000}-\\x{10FFFF}]", "")
                .replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }

    private String page(String inHead) {
        html.append("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en-US\" xml:lang=\"en-US\"><head><meta "
                + "charset=\"UTF-8\"/><title>").append(escaped(document.title()))
                .append("</title>\n<meta name=\"subject\" content=\"")
                .append(escaped(subject())).append("\"/><meta name=\"description\" content=\"").append(escaped(subject()))
                .append("\"/>\n<style>\n").append(style()).append("</style>\n");
        html.append(inHead).append("</head><body>\n").append(document.startsWide() ? "<div class=\"wide\">\n" : "").append("<h1>")
                .append(escaped(document.title())).append("</h1>\n");
        if (!document.subtitle().isEmpty()) {
            paragraph("subtitle", document.subtitle());
        }
        if (!document.mark().isEmpty()) {
            html.append("<div class=\"caution\">").append(escaped(document.mark())).append("</div>\n");
        }
        facts();
        for (int i = 0; i < document.sections().size(); i++) {
            section(i, document.sections().get(i));
            html.append(i == 0 && document.startsWide() ? "</div>\n" : "");
        }
        return html.append("</body></html>\n").toString();
    }

    private String subject() {
        return document.subtitle().isEmpty() ? document.title() : document.subtitle();
    }

    private String style() {
        Paper paper = document.paper();
        return (resource("page.css") + document.setting().css()).replace("UPRIGHT", points(paper.shortSide()) + " " + points(paper.longSide()))
                .replace("LANDSCAPE", points(paper.longSide()) + " " + points(paper.shortSide()))
                .replace("WIDE_TEXT", points(paper.textWidth(true))).replace("RUNNING", running()).replace("MARK", inCss(document.mark()));
    }

    /** The line at the foot; one that is too long for it goes on in a second line between two of its parts, not within a date. */
    private String running() {
        double roomPt = FOOT_SHARE * document.paper().textWidth(false);
        StringBuilder css = new StringBuilder();
        String line = "";
        for (String part : document.running().split(FOOT_PARTS)) {
            String longer = line.isEmpty() ? part : line + FOOT_PARTS + part;
            if (line.isEmpty() || FOOT_PT * TextWidth.em(longer) <= roomPt) {
                line = longer;
            } else {
                css.append(inCss(line)).append(NEW_LINE);
                line = part;
            }
        }
        return css.append(inCss(line)).toString();
    }

    private static String points(double points) {
        return String.format(Locale.ROOT, "%.2fpt", points);
    }

    /** A string of a style sheet; signs that end a string, a style or markup are escaped as CSS has it, for browsers read it raw. */
    private static String inCss(String text) {
        StringBuilder css = new StringBuilder();
        text.codePoints().filter(c -> c >= ' ').forEach(c -> {
            if ("\\\"'<>&".indexOf(c) >= 0) {
                css.append(String.format(Locale.ROOT, "\\%X ", c));
            } else {
                css.appendCodePoint(c);
            }
        });
        return css.toString();
    }

    static String resource(String name) {
        try (InputStream in = HtmlText.class.getResourceAsStream(name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String bookmarks(Document document) {
        StringBuilder marks = new StringBuilder("<bookmarks>");
        for (int i = 0; i < document.sections().size(); i++) {
            String heading = document.sections().get(i).heading();
            if (!heading.isEmpty()) {
                marks.append("<bookmark name=\"").append(escaped(heading)).append("\" href=\"#").append(Document.place(i)).append("\"/>");
            }
        }
        return marks.append("</bookmarks>").toString();
    }

    private void facts() {
        if (document.facts().isEmpty()) {
            return;
        }
        html.append("<table class=\"facts\"><tbody>\n");
        document.facts().forEach(f -> html.append("<tr><th scope=\"row\">").append(escaped(f.label())).append("</th><td>")
                .append(escaped(f.value())).append("</td></tr>\n"));
        html.append("</tbody></table>\n");
    }

    private void section(int place, Section section) {
        html.append("<div class=\"").append(section.newPage() ? "page" : "flow").append(section.wide() ? " wide" : "")
                .append("\">\n");
        if (!section.heading().isEmpty()) {
            html.append("<h2 id=\"").append(Document.place(place)).append("\">").append(escaped(section.heading())).append("</h2>\n");
        }
        for (int i = 0; i < section.blocks().size(); i++) {
            here = Document.place(place, i);
            block(section.blocks().get(i), document.paper().textWidth(section.wide()), i > 0);
        }
        html.append("</div>\n");
    }

    private void block(Block block, double textPoints, boolean movable) {
        if (block instanceof Block.Paragraph paragraph) {
            paragraph(paragraph.strong() ? "strong" : "text", paragraph.text());
        } else if (block instanceof Block.Bullets bullets) {
            html.append("<ul>\n");
            bullets.items().forEach(i -> html.append("<li>").append(escaped(i)).append("</li>\n"));
            html.append("</ul>\n");
        } else if (block instanceof Block.Caution caution) {
            html.append("<div class=\"caution\">").append(escaped(caution.text())).append("</div>\n");
        } else if (block instanceof Block.Figure figure) {
            html.append("<div class=\"figure\">").append(picture.apply(figure));
            paragraph("caption", figure.caption());
            html.append("</div>\n");
        } else if (block instanceof Block.Contents) {
            document.contents().forEach(e -> html.append(e.table() ? "<p class=\"entry of\">" : "<p class=\"entry\">").append("<a href=\"#")
                    .append(e.place()).append("\" title=\"").append(escaped(e.words())).append("\">").append(escaped(e.words())).append(
                            "</a></p>\n"));
        } else if (block instanceof Block.OnSheet longTable) {
            paragraph("text", longTable.words());
        } else if (block instanceof Block.Condensed condensed) {
            condensed.onPaper().forEach(t -> table(t, textPoints, movable, condensed.setting()));
        } else if (block instanceof DataTable table) {
            table(table, textPoints, movable, RowSetting.OPEN);
        }
    }

    private void paragraph(String style, String text) {
        html.append("<p class=\"").append(style).append("\">").append(escaped(text)).append("</p>\n");
    }

    /**
     * @param movable true when the table may go to the next page as a whole; else it stays below its heading
     * @param setting how its rows are set
     */
    private void table(DataTable table, double textPoints, boolean movable, RowSetting setting) {
        html.append(movable && table.isShort() ? "<div class=\"table whole\">\n" : "<div class=\"table\">\n");
        html.append("<p class=\"caption\"").append(here.isEmpty() ? "" : " id=\"" + here + "\"").append(">").append(escaped(table.title()))
                .append("</p>\n");
        here = "";
        if (!table.mark().isEmpty()) {
            paragraph("mark", table.mark());
        }
        ColumnWidths widths = ColumnWidths.on(table, setting, textPoints);
        html.append("<table class=\"data").append(widths.setting().look()).append("\"><colgroup>");
        for (double share : widths.shares(textPoints)) {
            html.append(String.format(Locale.ROOT, "<col style=\"width:%.2f%%\"/>", 100 * share));
        }
        html.append("</colgroup><thead><tr>");
        table.columns().forEach(c -> html.append("<th scope=\"col\"").append(c.format().right() ? " class=\"r\">" : ">")
                .append(whole(c.heading())).append("</th>"));
        html.append("</tr></thead>\n<tbody>\n");
        table.rows().forEach(r -> row(table, r));
        html.append("</tbody></table>\n");
        table.notes().forEach(n -> paragraph("note", n));
        if (browsed) {
            paragraph("note", document.running());
        }
        html.append("</div>\n");
    }

    private void row(DataTable table, DataTable.Row row) {
        html.append(switch (row.kind()) {
            case LINE, CHECK -> "<tr>";
            case GROUP -> "<tr class=\"group\">";
            case TOTAL -> "<tr class=\"total\">";
        });
        if (row.kind() == DataTable.Kind.GROUP) {
            html.append("<td colspan=\"").append(table.columns().size()).append("\">").append(escaped(table.printed(row, 0)))
                    .append("</td>");
        } else {
            for (int i = 0; i < table.columns().size(); i++) {
                cell(table, row, i);
            }
        }
        html.append("</tr>\n");
    }

    private void cell(DataTable table, DataTable.Row row, int column) {
        List<String> styles = new ArrayList<>();
        if (table.columns().get(column).format().right()) {
            styles.add("r");
        }
        if (table.columns().get(column).toFill() && row.kind() == DataTable.Kind.LINE) {
            styles.add("fill");
        }
        html.append(styles.isEmpty() ? "<td>" : "<td class=\"" + String.join(" ", styles) + "\">")
                .append(whole(table.printed(row, column))).append("</td>");
    }

    private static String whole(String text) {
        return IDENTIFIER.matcher(escaped(text)).replaceAll("<span class=\"id\">$0</span>");
    }
}
