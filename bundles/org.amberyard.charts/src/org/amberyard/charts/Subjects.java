package org.amberyard.charts;

import java.util.Optional;
import org.jfree.chart.entity.ChartEntity;

/** Tells which part of a study stands behind something that a chart has drawn. */
@FunctionalInterface
public interface Subjects {

    /** For a chart of sums, behind which no single part stands. */
    Subjects NONE = entity -> Optional.empty();

    /** The part behind a bar, a cell, a point; empty when there is no single one. */
    Optional<Subject> of(ChartEntity entity);
}
