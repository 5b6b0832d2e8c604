package org.amberyard.workbench.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.study.BusSteps;
import org.eclipse.osgi.util.NLS;

/** What the cells of years say: a sign with a short name to read, a sentence to hear. */
final class CellWords {

    private final PlanBoard board;
    private final TypeLooks looks;

    CellWords(PlanBoard board, TypeLooks looks) {
        this.board = board;
        this.looks = looks;
    }

    /** Sign and short name. */
    String cell(Standing standing) {
        String name = standing.bus().map(looks::shortName).orElse("");
        return (standing.kind().sign() + " " + name).strip();
    }

    /** What stands in the place of a bus in a year and how it has come there. */
    String sentence(Bus bus, int year) {
        Standing standing = board.at(bus, year);
        String place = ElementNames.of(bus);
        String type = standing.bus().map(ElementNames::of).orElse("");
        String said = NLS.bind(switch (standing.kind()) {
            case KEPT -> Messages.Words_kept;
            case BY_PLAN -> Messages.Words_byPlan;
            case BY_RULE -> Messages.Words_byRule;
            case MOVED -> Messages.Words_moved;
            case RETIRED -> Messages.Words_retired;
            case NONE -> Messages.Words_none;
        }, new Object[] {place, String.valueOf(year), type, standing.from()});
        return said + board.steps(bus).in(year).map(step -> more(bus, step)).orElse("");
    }

    /** What else a step does. */
    private String more(Bus bus, BusSteps.Step step) {
        String moves = Optional.ofNullable(step.cascadeTo()).map(b -> NLS.bind(Messages.Words_moves, ElementNames.of(b))).orElse("");
        return moves + step.programmes().stream().map(ElementNames::of).map(programme -> board.paid(bus, step.year(), programme)
                .map(paid -> NLS.bind(Messages.Words_pays, programme, paid)).orElse(NLS.bind(Messages.Words_asked, programme)))
                .collect(Collectors.joining());
    }

    /** The fleet of a year in numbers. */
    String year(List<Bus> buses, int year) {
        List<Standing> standings = buses.stream().map(b -> board.at(b, year)).toList();
        long all = standings.stream().filter(s -> s.bus().isPresent()).count();
        long electric = standings.stream().filter(s -> s.type() instanceof ElectricType).count();
        long bought = standings.stream()
                .filter(s -> s.kind() == Standing.Kind.BY_PLAN || s.kind() == Standing.Kind.BY_RULE).count();
        return NLS.bind(Messages.Words_year, new Object[] {String.valueOf(year), bought, all, electric});
    }
}
