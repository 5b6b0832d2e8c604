package org.amberyard.report.document;

import java.nio.charset.StandardCharsets;

/** The words of a document, as a reader of its page meets them. */
public final class HtmlTexts {
    private HtmlTexts() {
    }

    /** All words, cell by cell, without markup. */
    public static String words(Document document) {
        String html = new String(HtmlWriter.bytes(document), StandardCharsets.UTF_8);
        return html.replaceAll("(?s)<svg.*?</svg>", " ").replaceAll("<[^>]+>", " ").replace("&quot;", "\"").replace("&amp;", "&")
                .replaceAll("\\s+", " ");
    }
}
