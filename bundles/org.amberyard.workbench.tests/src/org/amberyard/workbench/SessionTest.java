package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.io.FileSum;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyResource;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.SessionTools;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.session.UntitledStudy;
import org.eclipse.emf.common.util.URI;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Looks at what a session keeps, and at what does not change when only the display does. */
@ExtendWith(WorkbenchExtension.class)
class SessionTest {

    private static final int KEPT_AFTER_MS = 200;

    @TempDir
    private Path folder;

    @Test
    void unsavedChangesAreKeptAndGivenUpOnClose(Display display) throws Exception {
        Path recovery = RecoveryFile.of(folder.resolve(OpenStudy.FILE));
        try (OpenStudy study = OpenStudy.inFolder(display, folder, KEPT_AFTER_MS)) {
            set(study, 2.5);

            study.await(() -> Files.exists(recovery));

            Study kept = StudyFile.load(recovery);
            assertEquals(2.5, ((FuelPrice) kept.getPrices().get(0)).getPricePerL());
        }
        assertFalse(Files.exists(recovery));
    }

    @Test
    void anEditLivesInMemoryForTenSecondsAtMost() {
        assertTrue(SessionTools.fresh().keptAfterMs() <= 10_000);
    }

    /** Two new studies are edited at a time; what is kept of one must not take the place of the other. */
    @Test
    void studiesWithoutAFileKeepTheirChangesApart(Display display) throws Exception {
        List<StudySession> sessions = new ArrayList<>();
        display.syncExec(() -> {
            for (String name : List.of("First", "Second")) {
                StudyResource resource = new StudyResource(URI.createURI(name + ".amberyard"));
                resource.getContents().add(StudyDefaults.create());
                StudySession session = StudySession.openUntitled(resource, new SessionTools(new StudyEvaluator(), KEPT_AFTER_MS));
                session.execute(SetCommand.create(session.domain(), session.study(), StudyPackage.Literals.STUDY__NAME, name));
                sessions.add(session);
            }
        });
        try {
            OpenStudy.await(display, () -> UntitledStudy.kept().size() == 2);
            List<String> names = new ArrayList<>();
            for (Path place : UntitledStudy.kept()) {
                names.add(StudyFile.load(RecoveryFile.of(place)).getName());
            }
            assertEquals(Set.of("First", "Second"), Set.copyOf(names));
        } finally {
            display.syncExec(() -> sessions.forEach(StudySession::close));
        }
        assertEquals(List.of(), UntitledStudy.kept());
    }

    /** Two edit one file, “all the same”: what is kept of one is not that of the other, and saving one gives up nothing of the other. */
    @Test
    void sessionsThatShareAFileKeepTheirChangesApart(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder, KEPT_AFTER_MS)) {
            StudySession other = display.syncCall(() -> StudySession.open(StudyFile.open(study.file()), study.file(), false,
                    new SessionTools(new StudyEvaluator(), KEPT_AFTER_MS)));
            try {
                set(study, 2.5);
                display.syncExec(() -> other.execute(SetCommand.create(other.domain(), other.study(), StudyPackage.Literals.STUDY__NAME,
                        "Theirs")));
                OpenStudy.await(display, () -> Files.exists(RecoveryFile.of(study.file())) && UntitledStudy.kept().size() == 1);

                display.syncCall(() -> {
                    study.session().saveAs(study.file());
                    return null;
                });

                assertEquals("Theirs", StudyFile.load(RecoveryFile.of(UntitledStudy.kept().get(0))).getName());
                assertTrue(display.syncCall(other::isChangedOutside));
                set(study, 2.75);
                study.await(() -> Files.exists(RecoveryFile.of(study.file())));
            } finally {
                display.syncExec(other::close);
            }
            assertEquals(List.of(), UntitledStudy.kept());
            assertTrue(Files.exists(RecoveryFile.of(study.file())));
        }
    }

    /** Changes of a version that someone has replaced since are brought back, and do not replace that one unasked. */
    @Test
    void changesOfAnEarlierVersionAreSavedBesideALaterOne(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            RecoveryFile.write(study.study(), study.file(), FileSum.of(study.file()));
            Files.writeString(study.file(), Files.readString(study.file()) + "\n");
            StudySession recovered = display.syncCall(() -> StudySession.open(StudyFile.open(RecoveryFile.of(study.file())), study.file(),
                    true, SessionTools.fresh()));
            try {
                assertTrue(display.syncCall(recovered::isChangedOutside));
            } finally {
                display.syncExec(recovered::close);
            }
        }
    }

    /** A disk that counts in whole seconds, a clock that was put back: time and size may be the same. */
    @Test
    void aChangeOfTheSameTimeAndSizeIsNoticed(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            FileTime time = Files.getLastModifiedTime(study.file());
            String text = Files.readString(study.file());
            Files.writeString(study.file(), text.replaceFirst("Ostrick Vale", "Ostrich Vale"));
            Files.setLastModifiedTime(study.file(), time);
            assertTrue(display.syncCall(() -> study.session().isChangedOutside()));
            Files.writeString(study.file(), text);
            assertFalse(display.syncCall(() -> study.session().isChangedOutside()), "touched, not changed");
        }
    }

    @Test
    void aFileThatAnotherProgramHasChangedIsNoticed(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            assertFalse(display.syncCall(() -> study.session().isChangedOutside()));
            Files.writeString(study.file(), Files.readString(study.file()) + "\n");
            assertTrue(display.syncCall(() -> study.session().isChangedOutside()));
        }
    }

    @Test
    void anEvaluationIsStoppedAndDoneAgain(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            StudyResult before = study.result();
            TariffCharge charge = ((ScheduledTariff) study.study().getDepot().getTariff()).getCharges().get(0);
            double dearer = 1.1 * charge.getPricePerKwh();
            display.syncExec(() -> {
                study.session().execute(SetCommand.create(study.session().domain(), charge,
                        DepotPackage.Literals.TARIFF_CHARGE__PRICE_PER_KWH, dearer));
                Commands.run("stopEvaluation");
            });
            OpenStudy.pause(2000);
            assertEquals(Evaluation.Phase.STALE, study.evaluation().phase());
            assertTrue(study.evaluation().reason().contains("F5"), study.evaluation().reason());
            assertSame(before, study.result());

            display.syncExec(() -> Commands.run("evaluateAgain"));

            assertNotEquals(before.plans().get(1).costs().ledger().presentValue(),
                    study.awaitResultAfter(before).plans().get(1).costs().ledger().presentValue());
        }
    }

    @Test
    void unitsChangeTheDisplayOnly(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            var run = study.study().getRoutes().get(0).getRuns().get(0);
            double stored = run.getDistanceKm();
            Grid grid = study.goTo(run, RoutesPackage.Literals.RUN__DISTANCE_KM);
            int column = display.syncCall(() -> grid.selection().column());
            assertEquals("Distance (mi)", display.syncCall(() -> grid.model().header(column)));

            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                    study.study().getSettings(), StudyPackage.Literals.SETTINGS__UNITS, UnitChoice.METRIC)));

            assertEquals("Distance (km)", display.syncCall(() -> grid.model().header(column)));
            assertEquals(stored, run.getDistanceKm());
        }
    }

    private static void set(OpenStudy study, double pricePerL) {
        study.display().syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                study.study().getPrices().get(0), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, pricePerL)));
    }
}
