package org.amberyard.report.document;

/** How the text of a document is set on paper. */
enum TextSetting {
    /** Ten points, with room around headings and tables. */
    OPEN(0.8),
    /** Half a point less, less room and lower margins: for a document that must keep to few pages. */
    CLOSE(0.6);

    private final double marginInches;

    TextSetting(double marginInches) {
        this.marginInches = marginInches;
    }

    /** Margin above and below the text of word processors, inches. */
    double marginInches() {
        return marginInches;
    }

    /** Style sheet of pages that is laid over the common one. */
    String css() {
        return this == CLOSE ? HtmlText.resource("page-close.css") : "";
    }

    /** Styles of word processors that take the place of common ones. */
    String styles() {
        return this == CLOSE ? HtmlText.resource("styles-close.xml") : "";
    }
}
