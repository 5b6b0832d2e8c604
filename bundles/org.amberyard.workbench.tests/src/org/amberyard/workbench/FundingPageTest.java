package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.funding.BusAward;
import org.amberyard.model.funding.FundingPackage;
import org.amberyard.model.funding.LowCarbonCredit;
import org.amberyard.model.funding.OperatingAid;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.prices.PricePoint;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Types the terms of programmes, low-carbon credits and operating aid. */
@ExtendWith(WorkbenchExtension.class)
class FundingPageTest {

    @TempDir
    private Path folder;

    @Test
    void everyFieldOfAProgrammeIsOnThePage(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Programme second = study.study().getProgrammes().get(1);
            for (EStructuralFeature field : second.eClass().getEAllStructuralFeatures()) {
                if (field instanceof EAttribute || field instanceof EReference reference && !reference.isContainment()) {
                    Optional<FeatureTable> table = display.syncCall(() -> study.editor().reveal(second, field));
                    assertTrue(table.filter(t -> t.has(field)).isPresent(), field.getName());
                }
            }
        }
    }

    @Test
    void awardsSayOfWhichProgrammeTheyAre(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            for (Programme programme : study.study().getProgrammes()) {
                study.goTo(programme, FundingPackage.Literals.PROGRAMME__NAME);
                String title = "Awards: " + programme.getName();
                assertTrue(display.syncCall(() -> Tools.has(title)), title);
            }
        }
    }

    @Test
    void termsAreTypedAndUndone(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            List<Programme> programmes = study.study().getProgrammes();
            Programme second = programmes.get(1);
            double before = second.getMatchShare();
            study.goTo(second, FundingPackage.Literals.PROGRAMME__MATCH_SHARE);
            keys.type("20");
            keys.press(SWT.CR);
            study.goTo(second, FundingPackage.Literals.PROGRAMME__EXCLUDES);
            Tools.copy(display, programmes.get(0).getName());
            keys.pressWith(SWT.CTRL, 'v');

            assertEquals(0.2, second.getMatchShare(), 1e-12);
            assertEquals(List.of(programmes.get(0)), second.getExcludes());

            display.syncExec(study.session()::undo);
            display.syncExec(study.session()::undo);

            assertEquals(before, second.getMatchShare(), 1e-12);
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void awardsAreThoseOfTheProgrammeInFocus(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Programme first = study.study().getProgrammes().get(0);
            BusAward award = first.getBusAwards().get(1);
            Grid awards = study.goTo(award, FundingPackage.Literals.BUS_AWARD__CAP);
            new Keyboard(display).type("123456");
            new Keyboard(display).press(SWT.CR);

            assertEquals(123456, award.getCap(), 1e-9);
            assertEquals(first.getBusAwards().size(), display.syncCall(() -> awards.model().rows()));

            study.goTo(study.study().getProgrammes().get(2), FundingPackage.Literals.PROGRAMME__NAME);
            assertEquals(study.study().getProgrammes().get(2).getBusAwards().size(),
                    display.syncCall(() -> awards.model().rows()));
        }
    }

    @Test
    void aTypedCreditPaysAndItsPointsAreFound(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            StudyResult before = study.result();
            LowCarbonCredit credit = (LowCarbonCredit) added(study, "Credits");
            study.goTo(credit, FundingPackage.Literals.LOW_CARBON_CREDIT__PRICE_PER_KWH);
            keys.type("0.05");
            keys.press(SWT.CR);
            study.goTo(credit, FundingPackage.Literals.LOW_CARBON_CREDIT__LAST_YEAR);
            keys.type("2040");
            keys.press(SWT.CR);

            StudyResult after = study.awaitResultAfter(before);
            assertTrue(presentCost(after) < presentCost(before), presentCost(before) + " to " + presentCost(after));

            PricePoint point = (PricePoint) added(study, "Price points");
            assertSame(credit, point.eContainer());
            study.goTo(point, PricesPackage.Literals.PRICE_POINT__FACTOR);
            keys.type("1.5");
            keys.press(SWT.CR);
            assertEquals(1.5, point.getFactor(), 1e-12);

            display.syncExec(() -> {
                while (study.session().history().undoable().isPresent()) {
                    study.session().undo();
                }
            });
            assertTrue(study.study().getLowCarbonCredits().isEmpty());
        }
    }

    @Test
    void aRefusedEntryKeepsItsSheetInFront(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            BusAward award = study.study().getProgrammes().get(0).getBusAwards().get(0);
            Grid awards = study.goTo(award, FundingPackage.Literals.BUS_AWARD__CAP);
            keys.type("much");
            display.syncExec(() -> Tools.press("Credits"));
            assertTrue(display.syncCall(awards::isVisible), "what is typed is no amount");

            keys.press(SWT.ESC);
            display.syncExec(() -> Tools.press("Credits"));
            assertTrue(display.syncCall(() -> Tools.table("Credits").grid().isVisible() && !awards.isVisible()));
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void aTypedAidTakesBackItsShareOfASaving(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            OperatingAid aid = (OperatingAid) added(study, "Operating aid");
            study.goTo(aid, FundingPackage.Literals.OPERATING_AID__OPERATING_SHARE);
            keys.type("40");
            keys.press(SWT.CR);

            assertEquals(0.4, aid.getOperatingShare(), 1e-12);
            assertEquals(PageKind.FUNDING, PageKind.of(aid));

            display.syncExec(study.session()::undo);
            display.syncExec(study.session()::undo);
            assertTrue(study.study().getOperatingAids().isEmpty());
        }
    }

    /** Adds an element in a table of the page; it comes to the front. */
    private static EObject added(OpenStudy study, String title) {
        study.show(PageKind.FUNDING);
        return study.display().syncCall(() -> {
            FeatureTable table = Tools.table(title);
            table.addElement();
            assertTrue(table.grid().isVisible(), title);
            return table.selected();
        });
    }

    private static double presentCost(StudyResult result) {
        return result.plans().get(1).measures().presentCost();
    }
}
