package org.amberyard.workbench.views;

import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.why.Derivation;
import org.amberyard.model.study.Study;
import org.amberyard.report.ResultTables;

/**
 * A cell of a result table that is asked about.
 *
 * @param study the study, to look up sources
 * @param result its results
 * @param table place of the table in the order of the tables
 * @param row row of the table
 * @param column column of the table
 */
record CellQuestion(Study study, StudyResult result, int table, int row, int column) {

    /** How the cell comes about. */
    Derivation why() {
        return ResultTables.why(table, result, row, column);
    }
}
