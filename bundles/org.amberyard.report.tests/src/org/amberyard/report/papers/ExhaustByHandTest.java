package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.report.document.DataTable;
import org.junit.jupiter.api.Test;

/** Who has only the printed tables can work out the exhaust of the buses that are compared with. */
class ExhaustByHandTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static final String HEATER_FUEL = "Heater fuel before";
    private static final double DIESEL_KG_PER_GALLON = 10.21;
    private static final double GASOLINE_KG_PER_GALLON = 8.78;

    @Test
    void fuelAndEngineOfTheBusComparedWithArePrintedSoThatItsExhaustCanBeWorkedOut() {
        PaperInput in = EXAMPLE.in(EXAMPLE.study(), PaperChoices.STANDARD);
        exhaustFollowsFromPrintedFuel(in);
        DataTable warming = GrantTable.T6.of(in).get(3);
        assertTrue(warming.columns().stream().noneMatch(c -> c.label().equals(HEATER_FUEL)), "no bus has a heater");
    }

    @Test
    void fuelOfHeatersStandsBesideThatOfEngines() {
        Study study = EXAMPLE.study();
        study.getVehicleTypes().stream().filter(CombustionType.class::isInstance).map(CombustionType.class::cast).forEach(type -> {
            type.setAuxiliaryHeaterKw(6);
            type.setCoolantHeatShare(0.05);
        });
        PaperInput heated = EXAMPLE.in(study, PaperChoices.STANDARD);
        exhaustFollowsFromPrintedFuel(heated);
        DataTable warming = GrantTable.T6.of(heated).get(3);
        assertTrue(total(warming, HEATER_FUEL) > 100, "a fault would be seen");
        assertTrue(warming.notes().stream().anyMatch(n -> n.contains(HEATER_FUEL + ": the diesel")), warming.notes().toString());
    }

    /**
     * By the tables alone: carbon dioxide before is printed fuel at the carbon of a gallon that table T12c cites. Lines are rounded so that
     * they add up, each within one unit of the last digit; the total within half a unit.
     */
    private static void exhaustFollowsFromPrintedFuel(PaperInput of) {
        DataTable gases = GrantTable.T6.of(of).get(0);
        DataTable warming = GrantTable.T6.of(of).get(3);
        double all = 0;
        for (int i = 0; i < of.replaced().size(); i++) {
            ReplacedBus bus = of.replaced().get(i);
            String words = gases.printed(gases.rows().get(i), ExamplePapers.column(gases, "Compared with"));
            assertEquals(words, warming.printed(warming.rows().get(i), ExamplePapers.column(warming, "Compared with")));
            int engine = bus.instead().isPresent() ? of.calendar(bus.year()) : of.facts().buses().get(bus.old().vehicle().unit()).engineModelYear();
            assertTrue(words.endsWith(", engine of " + engine), words);
            double kgPerGallon = words.contains("Gasoline") ? GASOLINE_KG_PER_GALLON : DIESEL_KG_PER_GALLON;
            double tons = (figure(warming, warming.rows().get(i), "Fuel before") * kgPerGallon
                    + heaterGallons(warming, warming.rows().get(i)) * DIESEL_KG_PER_GALLON) / GrantTerms.KG_PER_SHORT_TON;
            assertEquals(tons, figure(gases, gases.rows().get(i), "CO2 before"), 0.1 + 2 * DIESEL_KG_PER_GALLON
                    / GrantTerms.KG_PER_SHORT_TON, words);
            all += tons;
        }
        assertEquals(all, total(gases, "CO2 before"), 0.1);
    }

    private static double heaterGallons(DataTable warming, DataTable.Row row) {
        boolean printed = warming.columns().stream().anyMatch(c -> c.label().equals(HEATER_FUEL));
        return printed ? figure(warming, row, HEATER_FUEL) : 0;
    }

    private static double total(DataTable table, String heading) {
        DataTable.Row totals = table.rows().stream().filter(r -> r.kind() == DataTable.Kind.TOTAL).findFirst().orElseThrow();
        return figure(table, totals, heading);
    }

    private static double figure(DataTable table, DataTable.Row row, String heading) {
        return ((BigDecimal) row.cells().get(ExamplePapers.column(table, heading))).doubleValue();
    }
}
