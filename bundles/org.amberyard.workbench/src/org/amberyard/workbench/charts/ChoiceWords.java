package org.amberyard.workbench.charts;

import org.amberyard.workbench.session.Choices.Kind;

/** Words for kinds of choice. */
final class ChoiceWords {
    private ChoiceWords() {
    }

    /** What is to be chosen. */
    static String label(Kind kind) {
        return switch (kind) {
            case PLAN -> Messages.Choice_plan;
            case COMPARED -> Messages.Choice_compared;
            case ROUTE -> Messages.Choice_route;
            case TYPE -> Messages.Choice_type;
            case BUS -> Messages.Choice_bus;
            case YEAR -> Messages.Choice_year;
            case MONTH -> Messages.Choice_month;
            case DAY -> Messages.Choice_day;
            case STRETCH -> Messages.Choice_stretch;
            case POLICY -> Messages.Choice_policy;
            case TARIFF -> Messages.Choice_tariff;
            case POLLUTANT -> Messages.Choice_pollutant;
        };
    }

    /** Why there is nothing to choose; plans, years, months, days of a bus and pollutants there always are. */
    static String missing(Kind kind) {
        return switch (kind) {
            case COMPARED -> Messages.Missing_compared;
            case ROUTE -> Messages.Missing_route;
            case TYPE -> Messages.Missing_type;
            case STRETCH -> Messages.Missing_stretch;
            case PLAN, BUS, YEAR, MONTH, DAY, POLICY, TARIFF, POLLUTANT -> Messages.Chart_noBuses;
        };
    }
}
