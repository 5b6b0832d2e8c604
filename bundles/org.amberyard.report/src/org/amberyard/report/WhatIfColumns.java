package org.amberyard.report;

import org.amberyard.report.ResultColumn.Type;

/** Columns of the tables of a what-if. */
final class WhatIfColumns {
    private WhatIfColumns() {
    }

    static ResultColumn text(String name, String label, String meaning) {
        return new ResultColumn(name, label, "", Type.TEXT, meaning);
    }

    static ResultColumn number(String name, String label, String meaning) {
        return new ResultColumn(name, label, "", Type.NUMBER, meaning);
    }

    static ResultColumn count(String name, String label, String meaning) {
        return new ResultColumn(name, label, "count", Type.INTEGER, meaning);
    }

    static ResultColumn share(String name, String label, String meaning) {
        return new ResultColumn(name, label, "%", Type.NUMBER, meaning);
    }

    static ResultColumn plan() {
        return text("plan", "Plan", "Name of the plan.");
    }

    static ResultColumn year() {
        return new ResultColumn("year", "Year", "calendar year", Type.INTEGER, "Fiscal year.");
    }

    /** A share as a percentage; null stays null. */
    static Double percent(Double share) {
        return share == null ? null : 100 * share;
    }
}
