package org.amberyard.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.amberyard.core.consumption.Residual;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.report.ResultColumn.Type;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.LogChoice;
import org.amberyard.study.StudyUnits;

/** What a fitted consumption curve makes of every log. */
public final class ResidualTable {
    private static final String NAME = "residuals";
    private static final String TITLE = "Logs beside the curve";
    /** The table where nothing has been fitted yet. */
    public static final ResultTable NONE = new ResultTable(NAME, TITLE, List.of(), List.of());

    private final UnitSystem system;
    private final String currency;

    private ResidualTable(CurveFitting fitting) {
        this.system = StudyUnits.of(fitting.study());
        this.currency = StudyUnits.currency(fitting.study());
    }

    /** The table of a fitting, in the study's units; without rows when there is no fit. */
    public static ResultTable of(CurveFitting fitting) {
        ResidualTable table = new ResidualTable(fitting);
        List<Residual> residuals = fitting.fit().map(f -> f.residuals()).orElse(List.of());
        List<List<Object>> rows = new ArrayList<>();
        for (int i = 0; i < residuals.size(); i++) {
            rows.add(table.row(fitting.logs().used().get(i), residuals.get(i)));
        }
        return new ResultTable(NAME, TITLE, table.columns(), rows);
    }

    private List<ResultColumn> columns() {
        return List.of(new ResultColumn("log", "Log", "", Type.TEXT, "Place of the log in its table."),
                number("outside", "Temperature", Unit.CELSIUS, "Outside temperature, measured or of the month."),
                number("distance", "Distance", Unit.KILOMETRE, "Distance driven."),
                number("hours", "In service", Unit.HOUR, "Time in service; blank where the log does not tell."),
                number("measured", "Measured", Unit.KILOWATT_HOUR, "Energy by the log."),
                number("fitted", "By the curve", Unit.KILOWATT_HOUR, "Energy by the curve."),
                number("residual", "Difference", Unit.KILOWATT_HOUR, "Measured less by the curve."),
                number("share", "Difference", Unit.SHARE, "Measured less by the curve, as a share of the measured energy."),
                new ResultColumn("day", "Date", "", Type.TEXT, "Day of the log; blank where nobody knows."),
                new ResultColumn("unit", "Bus", "", Type.TEXT, "Bus that was driven; blank where nobody knows."),
                new ResultColumn("source", "Source", "", Type.TEXT, "Where the log is from, as its note says it."));
    }

    private ResultColumn number(String name, String label, Unit unit, String meaning) {
        return new ResultColumn(name, label, unit.symbol(system, currency), Type.NUMBER, meaning);
    }

    private List<Object> row(ConsumptionLog log, Residual residual) {
        var entry = residual.entry();
        return Arrays.asList(ElementNames.of(log), Unit.CELSIUS.show(entry.outsideC(), system),
                Unit.KILOMETRE.show(entry.km(), system), entry.hours() > 0 ? (Double) entry.hours() : null,
                entry.energyKwh(), residual.fittedKwh(), residual.kwh(), Unit.SHARE.show(residual.share(), system),
                IsoDay.of(log.getDate()).map(Object::toString).orElse(null), log.getBus() == null ? null : ElementNames.of(log.getBus()),
                LogChoice.source(log).isEmpty() ? null : LogChoice.source(log));
    }
}
