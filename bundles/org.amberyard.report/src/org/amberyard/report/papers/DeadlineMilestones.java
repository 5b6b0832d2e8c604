package org.amberyard.report.papers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.OldBus;
import org.amberyard.core.funding.Programme;

/** Awards and deadlines of the programmes that pay: by when old buses are scrapped, and when a project is closed out with each. */
final class DeadlineMilestones {
    static final String AWARD = "Award";
    static final String CLOSE_OUT = "Closed out at the latest";
    private final ProjectMoney money;
    private final ProgrammeDates dates;
    private final IntFunction<LocalDate> start;

    /**
     * @param start first day of a year of the study, when what is bought in it is in service
     */
    DeadlineMilestones(PaperInput in, ProjectMoney money, IntFunction<LocalDate> start) {
        this.money = money;
        this.dates = in.facts().dates();
        this.start = start;
    }

    List<Milestone> all() {
        List<Milestone> all = new ArrayList<>();
        money.lines().stream().flatMap(this::paying).distinct().forEach(p -> {
            dates.of(p.name()).award().ifPresent(d -> all.add(new Milestone(d.toString(), AWARD, "“" + p.name() + "”",
                    "noted in the study")));
            closeOut(p).ifPresent(all::add);
        });
        money.lines().forEach(l -> scrapped(l).ifPresent(all::add));
        return all;
    }

    /** True where a programme that pays says by when the old bus of a new one must be scrapped. */
    boolean hasScrapDeadline(String unit) {
        return money.lines().stream().filter(l -> isOf(l, unit)).anyMatch(l -> scrapped(l).isPresent());
    }

    private static boolean isOf(ProjectMoney.Line line, String unit) {
        return line.funded().purchase().bus().map(NewBus::unit).filter(unit::equals).isPresent();
    }

    private Stream<Programme> paying(ProjectMoney.Line line) {
        return line.shares().stream().filter(s -> s.amount().signum() > 0).flatMap(s -> s.programme().stream());
    }

    /** The earliest of the deadlines of the programmes that have the old bus scrapped. */
    private Optional<Milestone> scrapped(ProjectMoney.Line line) {
        Optional<String> old = line.funded().purchase().bus().flatMap(NewBus::old).filter(OldBus::leaves).map(OldBus::unit);
        OptionalInt days = paying(line).filter(p -> p.conditions().scrapsOldBus()).mapToInt(p -> dates.of(p.name()).scrapDays())
                .filter(d -> d > 0).min();
        return old.isEmpty() || days.isEmpty() ? Optional.empty() : Optional.of(new Milestone(start.apply(line.funded().purchase()
                .year()).plusDays(days.getAsInt()).toString(), "Scrapped at the latest", old.get(),
                Milestone.count(days.getAsInt(), "day") + " after service of the new bus"));
    }

    private Optional<Milestone> closeOut(Programme programme) {
        int days = dates.of(programme.name()).closeOutDays();
        OptionalInt last = money.lines().stream().filter(l -> paying(l).anyMatch(programme::equals))
                .mapToInt(l -> l.funded().purchase().year()).max();
        return days == 0 || last.isEmpty() ? Optional.empty() : Optional.of(new Milestone(start.apply(last.getAsInt())
                .plusDays(days).toString(), CLOSE_OUT, "“" + programme.name() + "”",
                Milestone.count(days, "day")
                        + " after the last purchase that it pays for"));
    }
}
