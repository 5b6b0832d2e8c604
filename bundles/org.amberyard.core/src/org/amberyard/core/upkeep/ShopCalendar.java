package org.amberyard.core.upkeep;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Work of a shop in a year: of one bus or of a whole fleet.
 *
 * @param events the tasks
 */
public record ShopCalendar(List<TaskEvent> events) {
    /** Working alone on high voltage is not done; common practice. */
    private static final int LEAST_PEOPLE = 2;

    public ShopCalendar {
        events = List.copyOf(events);
    }

    /** Tasks that fall due, in the order of the months; failures, which no calendar can place, left out. */
    public List<TaskEvent> due() {
        return events.stream().filter(e -> !e.failure())
                .sorted((a, b) -> Integer.compare(a.month(), b.month())).toList();
    }

    /** Labour by skill in each month, January first, failures included, h. */
    public List<Map<Skill, Double>> labourHoursByMonth() {
        List<Map<Skill, Double>> months = new ArrayList<>();
        for (int month = 0; month < WearYear.MONTHS; month++) {
            months.add(new EnumMap<>(Skill.class));
        }
        events.forEach(e -> months.get(e.month()).merge(e.task().skill(), e.labourHours(), Double::sum));
        return months;
    }

    /** Labour by skill in the year, failures included, h. */
    public Map<Skill, Double> labourHours() {
        return hours(events);
    }

    /** Labour to allow for failures in the year, h. */
    public double failureHours() {
        return events.stream().filter(TaskEvent::failure).mapToDouble(TaskEvent::labourHours).sum();
    }

    private static Map<Skill, Double> hours(List<TaskEvent> events) {
        Map<Skill, Double> hours = new EnumMap<>(Skill.class);
        events.forEach(e -> hours.merge(e.task().skill(), e.labourHours(), Double::sum));
        return hours;
    }

    /** People trained for high voltage that the year's work needs: none without such work, else two or more. */
    public int highVoltagePeople(double hoursPerPerson) {
        double hours = labourHours().getOrDefault(Skill.HIGH_VOLTAGE, 0.0);
        return hours > 0 ? Math.max(LEAST_PEOPLE, (int) Math.ceil(hours / hoursPerPerson)) : 0;
    }
}
