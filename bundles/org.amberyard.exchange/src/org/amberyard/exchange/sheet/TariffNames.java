package org.amberyard.exchange.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.study.NearWords;

/** Which tariff the rows of a sheet are of; one that the study lacks becomes one to compare with. */
final class TariffNames {
    private final SheetOutcome outcome;
    private final Depot depot;
    private final ElementIndex<Tariff> known;
    private final Map<ElementKey, ScheduledTariff> added = new HashMap<>();
    private boolean toldInUse;

    TariffNames(SheetOutcome outcome) {
        this.outcome = outcome;
        this.depot = outcome.study().getDepot();
        this.known = new ElementIndex<>(Stream.concat(Stream.ofNullable(depot.getTariff()), depot.getAlternativeTariffs().stream()).toList());
    }

    /**
     * The tariff of a row; empty where nothing tells it, which is told.
     *
     * @param sound false where the row is wrong, so that no tariff is added for it
     */
    Optional<ScheduledTariff> of(MappedRow row, boolean sound) throws CellFault {
        Optional<String> name = row.text(TariffSheet.TARIFF);
        if (name.isEmpty() && row.knows(TariffSheet.TARIFF)) {
            throw row.wrong(TariffSheet.TARIFF, "A tariff is missing; name one of " + known.names() + ", or a new one.");
        }
        return name.isEmpty() ? unnamed(row) : named(row, name.get(), sound);
    }

    private Optional<ScheduledTariff> unnamed(MappedRow row) {
        Optional<Tariff> named = known.find(row.sheetName());
        Tariff tariff = named.orElse(depot.getTariff());
        if (tariff instanceof ScheduledTariff scheduled) {
            if (named.isEmpty() && !toldInUse) {
                outcome.remark("The sheet names no tariff, so its rows are taken for the charges of “" + tariff.getName()
                        + "”, the tariff in use; add a column “Tariff” where they are of another.");
                toldInUse = true;
            }
            return Optional.of(scheduled);
        }
        outcome.problem(outcome.headerRow(), "Nothing tells which tariff the rows are of; add a column “Tariff” with its name.");
        return Optional.empty();
    }

    private Optional<ScheduledTariff> named(MappedRow row, String name, boolean sound) throws CellFault {
        Optional<Tariff> found = known.find(name);
        if (found.isPresent() && !(found.get() instanceof ScheduledTariff)) {
            throw row.wrong(TariffSheet.TARIFF, "“" + name + "” is a tariff with one price of energy in the study; give this one another name.");
        }
        return found.isPresent() || !sound ? found.map(ScheduledTariff.class::cast)
                : Optional.of(added.computeIfAbsent(ElementKey.of(name), k -> added(row, name)));
    }

    private ScheduledTariff added(MappedRow row, String name) {
        ScheduledTariff tariff = DepotFactory.eINSTANCE.createScheduledTariff();
        tariff.setName(name);
        List<String> others = Stream.concat(Stream.ofNullable(depot.getTariff()), depot.getAlternativeTariffs().stream()).map(Tariff::getName)
                .filter(Objects::nonNull).toList();
        depot.getAlternativeTariffs().add(tariff);
        outcome.added(row.number(), tariff);
        outcome.remark("“" + name + "” is no tariff of the study, so it becomes one to compare the tariff in use with." + NearWords.hint(name, others));
        return tariff;
    }
}
