package org.amberyard.charts;

/** Key of a series that the legend calls otherwise, or together with others. */
interface LegendKey {

    /** What the legend calls it. */
    String legend();
}
