package org.amberyard.charts;

/** What runs along one side of a chart and can be shown in part. */
interface ZoomAxis {

    /** What it says. */
    String label();

    /** Shows it as it was made. */
    void reset();

    /** All of it, to be asked before a part of it is shown. */
    Span whole();

    /** Shows a part of it. */
    void show(Span part);

    /** True when its figures fall from left to right, or from bottom to top. */
    boolean isReversed();
}
