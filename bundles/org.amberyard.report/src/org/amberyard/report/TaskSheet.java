package org.amberyard.report;

import java.util.List;
import java.util.Locale;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.UpkeepYear;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.upkeep.Skill;
import org.amberyard.core.upkeep.TaskEvent;

/** The tasks of one bus in one year as a page to print, with the cautions for work on high voltage. */
public final class TaskSheet {
    /** Cautions printed on every sheet; common practice. */
    public static final List<String> CAUTIONS = List.of(
            "High voltage can kill. Only professionals trained and authorized for it work on high-voltage parts, and never alone.",
            "Isolate, lock out and wait as the maker says; verify the absence of voltage with a tester that is proven before and "
                    + "after.",
            "Never open the battery pack. A damaged, hot or flooded pack is for the maker and the fire service.",
            "The vehicle maker's instructions rule where this sheet says otherwise.",
            "Local codes apply, and work on chargers and wiring of the building is for licensed electricians.");

    private final StudyInput study;
    private final UpkeepYear upkeep;
    private final StringBuilder html = new StringBuilder();

    private TaskSheet(StudyInput study, UpkeepYear upkeep) {
        this.study = study;
        this.upkeep = upkeep;
    }

    /** The sheet as an HTML page. */
    public static String html(StudyInput study, UpkeepYear upkeep) {
        return new TaskSheet(study, upkeep).page();
    }

    /** Title, vehicle type, cautions and what to allow beyond the calendar, as plain text. */
    public static String words(StudyInput study, UpkeepYear upkeep) {
        TaskSheet sheet = new TaskSheet(study, upkeep);
        return sheet.title() + "\n" + study.types().get(upkeep.record().vehicle().type()).name() + "\n\n"
                + String.join("\n", CAUTIONS) + "\n\n" + sheet.allowance();
    }

    /** Name for a file of the sheet; every sign that a file name may not have is replaced. */
    public static String fileName(StudyInput study, UpkeepYear upkeep) {
        return "tasks-" + upkeep.record().vehicle().unit().replaceAll("[^\\p{L}\\p{N}._-]", "_") + "-"
                + (study.baseYear() + upkeep.record().year()) + ".html";
    }

    private String title() {
        return "Bus " + upkeep.record().vehicle().unit() + ", " + (study.baseYear() + upkeep.record().year())
                + ": tasks of the shop";
    }

    private String allowance() {
        ShopCalendar calendar = upkeep.calendar();
        return calendar.events().isEmpty() ? "No task of the study applies to this bus."
                : "Allow " + figure(calendar.failureHours()) + " h more for repairs that no calendar can place ("
                        + figure(upkeep.failures().failures()) + " failures to be expected). Work for people trained for high "
                        + "voltage: " + figure(calendar.labourHours().getOrDefault(Skill.HIGH_VOLTAGE, 0.0)) + " h.";
    }

    private String page() {
        String title = title();
        html.append("<!DOCTYPE html>\n<html lang=\"en\"><head><meta charset=\"utf-8\"><title>").append(escaped(title))
                .append("</title>\n<style>body{font:11pt sans-serif;margin:2em}table{border-collapse:collapse}"
                        + "td,th{border:1px solid #888;padding:3px 8px;text-align:left}td.n{text-align:right}"
                        + "ul{border:2px solid #a00;padding:8px 8px 8px 28px}</style></head><body>\n<h1>")
                .append(escaped(title)).append("</h1>\n");
        html.append("<p>").append(escaped(study.types().get(upkeep.record().vehicle().type()).name())).append(", ")
                .append(escaped(study.name())).append("</p>\n<ul>\n");
        CAUTIONS.forEach(c -> html.append("<li>").append(escaped(c)).append("</li>\n"));
        html.append("</ul>\n");
        addTasks();
        return html.append("</body></html>\n").toString();
    }

    private void addTasks() {
        ShopCalendar calendar = upkeep.calendar();
        if (calendar.events().isEmpty()) {
            html.append("<p>").append(allowance()).append("</p>\n");
            return;
        }
        html.append("<table><tr><th>Month</th><th>Task</th><th>Times</th><th>Labour (h)</th><th>Parts (")
                .append(escaped(study.currency())).append(")</th><th>Who</th><th>Done, date and name</th></tr>\n");
        calendar.due().forEach(this::addRow);
        html.append("</table>\n<p>").append(allowance()).append("</p>\n");
    }

    private void addRow(TaskEvent event) {
        html.append("<tr><td>").append(MonthNames.full(event.month())).append("</td><td>")
                .append(escaped(event.task().name())).append("</td><td class=\"n\">").append((int) event.times())
                .append("</td><td class=\"n\">").append(figure(event.labourHours())).append("</td><td class=\"n\">")
                .append(String.format(Locale.ROOT, "%,.0f", event.partsCost())).append("</td><td>")
                .append(event.task().skill().word()).append("</td><td></td></tr>\n");
    }

    private static String figure(double hours) {
        return String.format(Locale.ROOT, "%.1f", hours);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
