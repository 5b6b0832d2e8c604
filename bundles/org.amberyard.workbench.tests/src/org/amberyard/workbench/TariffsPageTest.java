package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.exchange.MeterImport;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.study.StudyFindings;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.handlers.MeterAddition;
import org.amberyard.workbench.handlers.MeterReading;
import org.amberyard.workbench.look.CutText;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Types into tariffs, puts another into use, and imports the building's load. */
@ExtendWith(WorkbenchExtension.class)
class TariffsPageTest {

    @TempDir
    private Path folder;

    @Test
    void aChargeOfAnAlternativeTariffIsTypedAndUndone(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            ScheduledTariff tariff = byHours(study.study().getDepot(), "KE-GS-TOU");
            TariffCharge onPeak = tariff.getCharges().get(0);
            study.goTo(onPeak, DepotPackage.Literals.TARIFF_CHARGE__PRICE_PER_KWH);

            keys.type("0.151");
            keys.press(SWT.CR);

            assertEquals(0.151, onPeak.getPricePerKwh(), 1e-12);

            study.goTo(onPeak, DepotPackage.Literals.TARIFF_CHARGE__TO_MIN);
            keys.type("9:00 pm");
            keys.press(SWT.CR);

            assertEquals(1260, onPeak.getToMin());
            String overlap = "weekday in every month 20:00–21:00 covered twice, by On-peak energy and Mid-peak energy";
            assertTrue(display.syncCall(() -> StudyFindings.of(study.study())).stream()
                    .anyMatch(f -> f.message().contains(overlap)));

            keys.pressWith(SWT.CTRL, 'z');
            keys.pressWith(SWT.CTRL, 'z');

            assertEquals(0.148, onPeak.getPricePerKwh(), 1e-12);
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void bothRowsOfAnOverlapAreMarkedAndThePageSaysWhatIsWrong(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            ScheduledTariff inUse = (ScheduledTariff) study.study().getDepot().getTariff();
            TariffCharge late = inUse.getCharges().stream().filter(c -> c.getFromMin() < c.getToMin()).findFirst().orElseThrow();
            Grid charges = study.goTo(late, DepotPackage.Literals.TARIFF_CHARGE__TO_MIN);
            assertEquals("No errors in the study", fault(display));

            new Keyboard(display).type("8:30 pm");
            new Keyboard(display).press(SWT.CR);

            study.await(() -> fault(display).contains(" covered twice, by "));
            int from = display.syncCall(() -> charges.selection().column()) - 1;
            assertEquals(2, display.syncCall(() -> IntStream.range(0, charges.model().rows())
                    .filter(row -> charges.model().mark(row, from).filter(m -> m.level() == CellMark.Level.ERROR).isPresent())
                    .count()));

            new Keyboard(display).pressWith(SWT.CTRL, 'z');
            study.await(() -> fault(display).equals("No errors in the study"));
        }
    }

    /** What the editor says of errors at its foot. */
    private static String fault(Display display) {
        return display.syncCall(() -> View.all(OpenStudy.page().getWorkbenchWindow().getShell(), CutText.class).get(0).text());
    }

    @Test
    void aFieldOfATariffIsFoundAmongItsTerms(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            ScheduledTariff tariff = byHours(study.study().getDepot(), "KE-GS-TOU");
            study.goTo(tariff, DepotPackage.Literals.SCHEDULED_TARIFF__CUSTOMER_CHARGE);

            new Keyboard(display).type("70");
            new Keyboard(display).press(SWT.CR);

            assertEquals(70, tariff.getCustomerCharge(), 1e-12);
        }
    }

    @Test
    void anotherTariffIsPutIntoUseAndUndone(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Depot depot = study.study().getDepot();
            List<Tariff> alternatives = List.copyOf(depot.getAlternativeTariffs());
            Tariff before = depot.getTariff();
            ScheduledTariff chosen = byHours(depot, "KE-GS-TOU");
            int place = alternatives.indexOf(chosen);
            Grid tariffs = study.goTo(chosen, DepotPackage.Literals.TARIFF__NAME);

            display.syncExec(() -> Tools.press("Use"));

            assertSame(chosen, depot.getTariff());
            assertSame(before, depot.getAlternativeTariffs().get(place));
            assertEquals(alternatives.size(), depot.getAlternativeTariffs().size());
            assertEquals("KE-GS-TOU", display.syncCall(() -> tariffs.model().text(0, 0)));
            assertEquals(0, display.syncCall(() -> tariffs.selection().row()), "the focus stays with the tariff");

            display.syncExec(() -> study.session().undo());

            assertSame(before, depot.getTariff());
            assertEquals(alternatives, depot.getAlternativeTariffs());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void pricesAndHoursOfChargesAreSeenAtOnce(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            ScheduledTariff tariff = byHours(study.study().getDepot(), "KE-GS-TOU");
            Grid charges = study.goTo(tariff.getCharges().get(0), DepotPackage.Literals.TARIFF_CHARGE__PRICE_PER_KWH);
            study.await(() -> charges.getClientArea().width > 0 && !charges.getHorizontalBar().isVisible());
            int last = display.syncCall(() -> charges.model().columns()) - 1;
            assertEquals(List.of("all year, weekdays, 14:00 to 20:00", "all year, every day, all day", "June to September, weekdays, 14:00 to 20:00"),
                    display.syncCall(() -> IntStream.of(0, 5, 6).mapToObj(row -> charges.model().text(row, last)).toList()));
            Grid hours = study.goTo(tariff.getCharges().get(0), DepotPackage.Literals.TARIFF_CHARGE__TO_MIN);
            study.await(() -> hours.getClientArea().width > 0 && !hours.getHorizontalBar().isVisible());

            Grid ratchets = study.goTo(tariff.getCharges().get(0), DepotPackage.Literals.TARIFF_CHARGE__RATCHET_SHARE);
            assertTrue(display.syncCall(() -> ratchets.isVisible() && !charges.isVisible()), "its own sheet is in front");
        }
    }

    @Test
    void aFlatTariffIsAddedTypedAndTakenBack(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Depot depot = study.study().getDepot();
            List<Tariff> before = List.copyOf(depot.getAlternativeTariffs());
            study.goTo(before.get(0), DepotPackage.Literals.TARIFF__NAME);

            display.syncExec(() -> Tools.press("Add flat"));

            FlatTariff flat = (FlatTariff) depot.getAlternativeTariffs().get(1);
            assertEquals(before.size() + 1, depot.getAlternativeTariffs().size());
            assertTrue(flat.getName().startsWith("Flat tariff "), flat.getName());

            study.goTo(flat, DepotPackage.Literals.FLAT_TARIFF__ENERGY_PRICE_PER_KWH);
            new Keyboard(display).type("0.12");
            new Keyboard(display).press(SWT.CR);

            assertEquals(0.12, flat.getEnergyPricePerKwh(), 1e-12);

            display.syncExec(() -> study.session().undo());
            display.syncExec(() -> study.session().undo());

            assertEquals(before, depot.getAlternativeTariffs());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void aMetersDataTakeThePlaceOfTheMonthsTheyHold(Display display) throws Exception {
        String hours = IntStream.range(0, 31 * 24).mapToObj(h -> String.format("2025-07-%02d %02d:00,33", h / 24 + 1, h % 24))
                .collect(Collectors.joining("\n", "start,kW\n", "\n"));
        Path file = Files.writeString(folder.resolve("meter.csv"), hours);
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Depot depot = study.study().getDepot();
            display.syncExec(() -> depot.getBuildingLoadDays().forEach(d -> d.setSolarKw("1 2 3")));
            List<BuildingLoadDay> before = List.copyOf(depot.getBuildingLoadDays());
            MeterReading reading = new MeterReading(file);
            reading.schedule();
            reading.join();

            MeterImport imported = reading.imported().orElseThrow().load(0, ZoneOffset.UTC, depot.getBuildingMonths());
            BuildingLoadDay day = display.syncCall(() -> new MeterAddition(study.session(), imported).add());

            assertEquals(24, depot.getBuildingLoadDays().size());
            Grid days = study.goTo(day, DepotPackage.Literals.BUILDING_LOAD_DAY__MONTH);
            int row = display.syncCall(() -> days.selection().row());
            assertEquals(List.of("July", "weekday", "33.0", "33.0"), display.syncCall(() -> IntStream
                    .range(0, days.model().columns())
                    .filter(c -> List.of("Month", "Day", "Mean (kW)", "Peak (kW)").contains(days.model().header(c)))
                    .mapToObj(c -> days.model().text(row, c)).toList()));
            assertEquals("1 2 3", day.getSolarKw());

            display.syncExec(() -> study.session().undo());

            assertEquals(before, depot.getBuildingLoadDays());
            assertTrue(reading.refusal().isEmpty());
        }
    }

    private static ScheduledTariff byHours(Depot depot, String name) {
        return depot.getAlternativeTariffs().stream().filter(ScheduledTariff.class::isInstance).map(ScheduledTariff.class::cast)
                .filter(t -> t.getName().equals(name)).findFirst().orElseThrow();
    }
}
