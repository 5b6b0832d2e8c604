package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.funding.FundingFactory;
import org.amberyard.model.funding.LowCarbonCredit;
import org.amberyard.model.funding.OperatingAid;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.meta.ModelPackages;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.prices.PricesFactory;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.study.UnitChoice;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StudyFolderTest {
    private static final Path EXAMPLE =
            Path.of(System.getProperty("basedir", ".")).resolve("../../examples/ostrick-vale").normalize();

    @TempDir
    Path folder;

    @Test
    void exampleStudyIsWhatItsFilesSay() throws Exception {
        Study imported = StudyFolderImport.read(EXAMPLE.resolve("csv"));
        Study saved = StudyFile.load(EXAMPLE.resolve("ostrick-vale.amberyard"));
        assertEquals(24, imported.getBuses().size());
        assertEquals(18, imported.getRoutes().size());
        assertTrue(EcoreUtil.equals(imported, saved), "import examples/ostrick-vale/csv again and save it as the example");
    }

    @Test
    void whatIsWrittenIsReadBack() throws Exception {
        Study example = StudyFolderImport.read(EXAMPLE.resolve("csv"));
        Path first = folder.resolve("first");
        Path second = folder.resolve("second");
        StudyFolderExport.write(example, first);
        StudyFolderExport.write(StudyFolderImport.read(first), second);
        for (String name : names(first)) {
            assertArrayEquals(Files.readAllBytes(first.resolve(name)), Files.readAllBytes(second.resolve(name)), name);
        }
        assertEquals(names(first), names(second));
        assertTrue(Files.readString(first.resolve("runs.csv")).startsWith("Route,Name,Kind,Calendar,Departure (h:mm),"));
    }

    /** Every kind of element that a study can hold has a table. */
    /** Files of a district's own are told, not passed over in silence. */
    @Test
    void aFileThatIsNoTableOfAStudyIsRefusedByName() throws Exception {
        StudyFolderExport.write(StudyFile.load(EXAMPLE.resolve("ostrick-vale.amberyard")), folder);
        Files.writeString(folder.resolve("Fleet list.CSV"), "Bus,Year\n7,2011\n");
        Files.writeString(folder.resolve("notes.txt"), "for ourselves");
        ImportException refused = assertThrows(ImportException.class, () -> StudyFolderImport.read(folder));
        assertEquals(1, refused.problems().size(), refused.getMessage());
        assertTrue(refused.problems().get(0).toString().startsWith("Fleet list.CSV: This is no table of a study"), refused.getMessage());
    }

    @Test
    void everyKindOfElementHasATable() {
        Set<EClass> kept = StudyTables.ALL.stream().map(StudyTable::type).collect(Collectors.toSet());
        Set<EClass> held = new HashSet<>();
        addHeld(StudyPackage.Literals.STUDY, held);
        held.remove(CommonPackage.Literals.SOURCE_NOTE);
        held.removeIf(EClass::isAbstract);
        assertEquals(held.stream().map(EClass::getName).sorted().toList(), kept.stream().map(EClass::getName).sorted().toList());
    }

    private static void addHeld(EClass type, Set<EClass> held) {
        List<EClass> kinds = ModelPackages.all().stream().flatMap(p -> p.getEClassifiers().stream()).filter(EClass.class::isInstance)
                .map(EClass.class::cast).filter(type::isSuperTypeOf).toList();
        for (EClass kind : kinds) {
            if (held.add(kind)) {
                kind.getEAllContainments().forEach(c -> addHeld(c.getEReferenceType(), held));
            }
        }
    }

    @Test
    void aStudyWithEveryKindOfElementIsWrittenAndReadBack() throws Exception {
        Study every = EveryElement.study();
        StudyFolderExport.write(every, folder);
        EveryElement.assertSame(every, StudyFolderImport.read(folder));
    }

    @Test
    void theExampleIsWrittenAndReadBackInEitherUnitsToTheLastDigits() throws Exception {
        Study example = StudyFile.load(EXAMPLE.resolve("ostrick-vale.amberyard"));
        example.getBuses().get(0).setOtherKmPerYear(1234.567890123456);
        for (UnitChoice units : UnitChoice.VALUES) {
            example.getSettings().setUnits(units);
            Path out = folder.resolve(units.getName());
            StudyFolderExport.write(example, out);
            EveryElement.assertSame(example, StudyFolderImport.read(out));
        }
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aUsedBusIsWrittenAndReadBack() throws Exception {
        Study example = StudyFolderImport.read(EXAMPLE.resolve("csv"));
        Replacement used = example.getPlans().get(1).getReplacements().get(0);
        used.setUsedAgeYears(4);
        used.setUsedOdometerKm(62_000 * 1.609344);
        used.setUsedPrice(151_000);
        used.setUsedHealth(0.91);
        example.getProgrammes().get(0).setNewOnly(false);
        StudyFolderExport.write(example, folder);
        Study read = StudyFolderImport.read(folder);
        Replacement again = read.getPlans().get(1).getReplacements().get(0);
        assertEquals(used.getBus().getName(), again.getBus().getName());
        assertEquals(4, again.getUsedAgeYears());
        assertEquals(used.getUsedOdometerKm(), again.getUsedOdometerKm(), 1e-6);
        assertEquals(151_000, again.getUsedPrice(), 1e-9);
        assertEquals(0.91, again.getUsedHealth(), 1e-12);
        assertFalse(read.getProgrammes().get(0).isNewOnly());
        assertTrue(Files.readString(folder.resolve("replacements.csv")).lines().findFirst().orElseThrow().contains(
                "Age of used bus (yr),Odometer of used bus (mi),Price of used bus (USD),Battery health of used bus (%)"));
    }

    @Test
    void aTariffByHoursInUseIsReadWithItsCharges() throws Exception {
        Study example = StudyFolderImport.read(EXAMPLE.resolve("csv"));
        Depot depot = example.getDepot();
        Tariff byHours = depot.getAlternativeTariffs().get(0);
        depot.setTariff(byHours);
        StudyFolderExport.write(example, folder);
        ScheduledTariff read = (ScheduledTariff) StudyFolderImport.read(folder).getDepot().getTariff();
        assertTrue(EcoreUtil.equals(byHours, read));
        assertEquals(9, read.getCharges().size());
        assertEquals(0.6, read.getCharges().get(5).getRatchetShare(), 1e-12);
    }

    @Test
    void rowsWhoseOwnerIsMissingAreNotLostSilently() throws Exception {
        copyExample();
        Files.delete(folder.resolve("tariff_by_hours.csv"));
        Files.delete(folder.resolve("sources.csv"));
        String message = assertThrows(ImportException.class, () -> StudyFolderImport.read(folder)).getMessage();
        assertTrue(message.startsWith("tariff_charges.csv, row 2: The folder has no tariff that could hold the row."), message);
    }

    @Test
    void metricHeadersAreUnderstood() throws Exception {
        copyExample();
        change("site.csv", "Elevation (ft)", "Elevation (m)");
        assertEquals(980, StudyFolderImport.read(folder).getSite().getElevationM(), 1e-12);
    }

    @Test
    void everyProblemIsNamedWithFileRowColumnAndRemedy() throws Exception {
        copyExample();
        change("runs.csv", "R01,AM,morning,School days,06:35,64", "R01,AM,morning,School days,6.35,sixty");
        change("buses.csv", "B02,route,Diesel C 2005-2009,R02", "B02,route,Diesel X,R02");
        change("site.csv", "Elevation (ft)", "Elevation (cubits)");
        change("bus_awards.csv", "Clean Fleet Fund,A", "Clean Fleet Found,A");
        ImportException refused = assertThrows(ImportException.class, () -> StudyFolderImport.read(folder));
        assertEquals(List.of(
                "site.csv, row 1, column “Elevation (cubits)”: No field of this table has this label and unit; see the data dictionary for the columns.",
                "runs.csv, row 2, column “Departure (h:mm)”: Departure is “6.35”; it must be a clock time such as 6:35 or 2:05 pm.",
                "runs.csv, row 2, column “Duration (min)”: Duration is “sixty”; it must be a number such as 1,234.5 in min.",
                "bus_awards.csv, row 3, column “Programme”: “Clean Fleet Found” is not the name of just one programme.",
                "buses.csv, row 3, column “Vehicle type”: “Diesel X” names nothing of the kind that belongs here."),
                refused.problems().stream().map(ImportProblem::toString).toList());
    }

    @Test
    void aTripWithAnUnknownBusIsRefused() throws Exception {
        copyExample();
        change("trips.csv", "T002,athletics away,2025-09-08,15:20,3.9,47,C,44,B22", "T002,athletics away,2025-09-08,15:20,3.9,47,C,44,B99");
        ImportException refused = assertThrows(ImportException.class, () -> StudyFolderImport.read(folder));
        assertEquals(List.of("trips.csv, row 3, column “Bus”: “B99” names nothing of the kind that belongs here."),
                refused.problems().stream().map(ImportProblem::toString).toList());
    }

    @Test
    void severalElementsStandInOneCell() throws Exception {
        Study example = StudyFolderImport.read(EXAMPLE.resolve("csv"));
        Replacement step = example.getPlans().get(1).getReplacements().get(0);
        step.getProgrammes().clear();
        step.getProgrammes().addAll(example.getProgrammes().subList(0, 2));
        StudyFolderExport.write(example, folder);
        assertTrue(Files.readString(folder.resolve("replacements.csv")).contains(",Clean Fleet Fund; National Fleet Rebate"));
        assertEquals(List.of("Clean Fleet Fund", "National Fleet Rebate"), StudyFolderImport.read(folder).getPlans().get(1)
                .getReplacements().get(0).getProgrammes().stream().map(Programme::getName).toList());
        change("replacements.csv", "Clean Fleet Fund; National Fleet Rebate", "Clean Fleet Fund;Other Fund");
        ImportException refused = assertThrows(ImportException.class, () -> StudyFolderImport.read(folder));
        assertTrue(refused.getMessage().contains("column “Programmes”: “Other Fund” names nothing of the kind"), refused.getMessage());
    }

    @Test
    void columnsAreReadByTheLabelsThatTheyHadBefore() throws Exception {
        StudyFolderExport.write(StudyFolderImport.read(EXAMPLE.resolve("csv")), folder);
        change("port_purchases.csv", "Count,Programmes", "Count,Programme");
        assertEquals(1, StudyFolderImport.read(folder).getPlans().get(1).getPortPurchases().get(0).getProgrammes().size());
    }

    @Test
    void creditsAndAidAreTables() throws Exception {
        Study example = StudyFolderImport.read(EXAMPLE.resolve("csv"));
        LowCarbonCredit credit = FundingFactory.eINSTANCE.createLowCarbonCredit();
        credit.setName("Credit");
        credit.getPoints().add(PricesFactory.eINSTANCE.createPricePoint());
        example.getLowCarbonCredits().add(credit);
        OperatingAid aid = FundingFactory.eINSTANCE.createOperatingAid();
        aid.setName("Aid");
        example.getOperatingAids().add(aid);
        StudyFolderExport.write(example, folder);
        Study read = StudyFolderImport.read(folder);
        assertTrue(EcoreUtil.equals(credit, read.getLowCarbonCredits().get(0)));
        assertTrue(EcoreUtil.equals(aid, read.getOperatingAids().get(0)));
    }

    @Test
    void duplicateNamesAreNotGuessedAt() throws Exception {
        copyExample();
        change("routes.csv", "R02,", "R01,");
        ImportException refused = assertThrows(ImportException.class, () -> StudyFolderImport.read(folder));
        assertTrue(refused.getMessage().contains("buses.csv, row 2, column “Route”: “R01” names 2 elements of the kind"),
                refused.getMessage());
    }

    @Test
    void brokenFilesAreRefusedWithARemedy() throws Exception {
        copyExample();
        Files.write(folder.resolve("site.csv"), new byte[] {'N', 'a', 'm', 'e', '\n', (byte) 0xe9, '\n'});
        Files.writeString(folder.resolve("calendars.csv"), "Name\nA,B,C\n");
        Files.writeString(folder.resolve("pack_price.csv"), "\"Price (USD/kWh)\n280");
        String message = assertThrows(ImportException.class, () -> StudyFolderImport.read(folder)).getMessage();
        assertTrue(message.contains("site.csv: The file is not UTF-8 text; save it again as CSV UTF-8."), message);
        assertTrue(message.contains("calendars.csv, row 2: The row has 3 cells but the header has 1;"), message);
        assertTrue(message.contains("pack_price.csv: The file cannot be read"), message);
    }

    @Test
    void tooManyRowsAreRefusedBeforeTheyFillTheMemory() throws Exception {
        copyExample();
        Files.writeString(folder.resolve("port_types.csv"), "Name\n" + "x\n".repeat(CsvSheet.MOST_ROWS + 1));
        String message = assertThrows(ImportException.class, () -> StudyFolderImport.read(folder)).getMessage();
        assertTrue(message.contains("port_types.csv: The file has more than 100,000 rows"), message);
    }

    @Test
    void sourceNotesMustPointAtAField() throws Exception {
        copyExample();
        change("sources.csv", "fuel_prices,diesel,pricePerL,measured", "fuel_prices,diesel,pricePerGallon,measured");
        String message = assertThrows(ImportException.class, () -> StudyFolderImport.read(folder)).getMessage();
        assertTrue(message.contains("The element has no field “pricePerGallon”."), message);
    }

    private void copyExample() throws IOException {
        for (String name : names(EXAMPLE.resolve("csv"))) {
            Files.copy(EXAMPLE.resolve("csv").resolve(name), folder.resolve(name));
        }
    }

    private void change(String file, String from, String to) throws IOException {
        String text = Files.readString(folder.resolve(file), StandardCharsets.UTF_8);
        assertTrue(text.contains(from), from);
        Files.writeString(folder.resolve(file), text.replace(from, to));
    }
}
