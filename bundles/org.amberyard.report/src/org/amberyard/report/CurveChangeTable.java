package org.amberyard.report;

import java.util.List;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.report.ResultColumn.Type;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.CurveWriter;
import org.amberyard.study.RoundedText;

/** The fields of a vehicle type that a fitted consumption curve would change, with what they hold and would hold. */
public final class CurveChangeTable {
    private static final String NAME = "curve_changes";
    private static final String TITLE = "What accepting it changes";
    /** The table where nothing has been fitted yet. */
    public static final ResultTable NONE = new ResultTable(NAME, TITLE, List.of(), List.of());

    private CurveChangeTable() {
    }

    /** The table of a fitting, in the study's units; without rows when there is no fit or it changes nothing. */
    public static ResultTable of(CurveFitting fitting) {
        RoundedText text = new RoundedText(fitting.study());
        return new ResultTable(NAME, TITLE, List.of(column("field", "Field", Type.TEXT, "Field of the vehicle type."),
                column("now", "Now", Type.FIGURE, "What it holds."), column("then", "By the logs", Type.FIGURE, "What it would hold.")),
                CurveWriter.changes(fitting).stream().map(c -> List.<Object>of(FieldInfo.of(c.field()).label(), text.shown(c.field(), c.before()),
                        text.of(c.field(), c.after()))).toList());
    }

    private static ResultColumn column(String name, String label, Type type, String meaning) {
        return new ResultColumn(name, label, "", type, meaning);
    }
}
