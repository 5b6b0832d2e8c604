package org.amberyard.report;

import java.util.List;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.UpkeepYear;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.upkeep.TaskEvent;
import org.amberyard.report.ResultColumn.Type;

/** The tasks of a task sheet as a table, in the order of the months. */
public final class TaskSheetTable {
    private static final String NAME = "task_sheet";
    private static final String TITLE = "Tasks of the shop";
    /** The table where no bus is chosen. */
    public static final ResultTable NONE = new ResultTable(NAME, TITLE, List.of(), List.of());

    private TaskSheetTable() {
    }

    /** The tasks that fall due on a bus in a year. */
    public static ResultTable of(StudyInput study, UpkeepYear upkeep) {
        String money = Unit.MONEY.symbol(UnitSystem.METRIC, study.currency());
        List<ResultColumn> columns = List.of(new ResultColumn("month", "Month", "", Type.TEXT, "Month in which it falls due."),
                new ResultColumn("task", "Task", "", Type.TEXT, "What is to be done."),
                new ResultColumn("times", "Times", "", Type.INTEGER, "How often in the month."),
                new ResultColumn("labour", "Labour", "h", Type.NUMBER, "Labour, the age of the bus included."),
                new ResultColumn("parts", "Parts", money, Type.NUMBER, "Parts at base-date prices, without calibration."),
                new ResultColumn("who", "Who", "", Type.TEXT, "Who may do it."));
        return new ResultTable(NAME, TITLE, columns, upkeep.calendar().due().stream().map(TaskSheetTable::row).toList());
    }

    private static List<Object> row(TaskEvent event) {
        return List.of(MonthNames.full(event.month()), event.task().name(), (int) event.times(), event.labourHours(),
                event.partsCost(), event.task().skill().word());
    }
}
