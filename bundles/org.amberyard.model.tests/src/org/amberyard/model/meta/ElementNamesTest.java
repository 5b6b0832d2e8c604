package org.amberyard.model.meta;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.amberyard.model.SmallStudy;
import org.amberyard.model.common.CommonFactory;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.SiteWork;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffDays;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.WorkOrder;
import org.amberyard.model.study.ChartNote;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.whatif.Scenario;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifFactory;
import org.amberyard.model.whatif.WhatIf;
import org.eclipse.emf.ecore.EObject;
import org.junit.jupiter.api.Test;

class ElementNamesTest {
    private final SmallStudy small = new SmallStudy();

    @Test
    void namedElementsGoByTheirNames() {
        assertNames("B01", "bus B01", small.bus);
        assertNames("R01", "route R01", small.route);
        assertNames("AM", "run AM of route R01", small.am);
        assertNames("New study", "study New study", small.study);
        assertNames("C electric", "electric bus type C electric", small.electric);
        assertNames("AC port", "port type AC port", small.ports.getPortType());
    }

    @Test
    void othersGoByWhatTellsThemApart() {
        assertNames("January", "month climate January", small.study.getSite().getClimate().get(0));
        assertNames("2027 B01", "replacement 2027 B01 of plan Electric", small.replacement);
        assertNames("2027 1 × AC port", "port purchase 2027 1 × AC port of plan Electric", small.ports);
        assertNames("C", "bus award C of programme Rebate", small.award);
        assertNames("diesel", "fuel price diesel", small.study.getPrices().get(0));
        assertNames("electric energy", "cost index electric energy", small.study.getPrices().get(5));
    }

    @Test
    void whatIsThereOnceGoesByItsKind() {
        assertNames("settings", "settings", small.study.getSettings());
        assertNames("exhaust fluid price", "exhaust fluid price", small.study.getPrices().get(3));
    }

    @Test
    void sourceNotesNameFieldAndOwner() {
        SourceNote note = CommonFactory.eINSTANCE.createSourceNote();
        small.diesel.getSources().add(note);
        assertNames("?", "source note ? of engine bus type C diesel", note);
        note.setField("curbMassKg");
        assertNames("curbMassKg", "source note curb mass of engine bus type C diesel", note);
        assertEquals("curve – base use", Phrase.inName("Curve: base use"));
        assertEquals("NOx – idling", Phrase.inName("NOx, idling"));
        note.setField("*");
        assertNames("*", "source note all fields of engine bus type C diesel", note);
    }

    /** Files have the names of the data dictionary, people the labels. */
    @Test
    void changesOfScenariosAreReadByTheLabelsOfWhatTheyChange() {
        WhatIf whatIf = WhatifFactory.eINSTANCE.createWhatIf();
        Scenario scenario = WhatifFactory.eINSTANCE.createScenario();
        whatIf.getScenarios().add(scenario);
        scenario.setName("Dear");
        ScenarioChange change = WhatifFactory.eINSTANCE.createScenarioChange();
        scenario.getChanges().add(change);
        change.setKind("FuelPrice");
        change.setElement("diesel");
        change.setField("pricePerL; escalationPerYear");
        assertNames("diesel pricePerL; escalationPerYear", "change diesel / price + rise per year of scenario Dear", change);
        change.setElement("*");
        change.setField("pricePerL");
        assertNames("* pricePerL", "change fuel price / price of scenario Dear", change);
        assertEquals("precio del combustible / precio", ElementNames.read(change, ModelWords.of(new Locale("es"))));
        change.setKind("Bread");
        assertNames("* pricePerL", "change bread / pricePerL of scenario Dear", change);
        change.setElement("diesel");
        change.setField(null);
        assertEquals("diesel", ElementNames.of(change));
    }

    @Test
    void notesOnChartsAreReadByWordsNotByTheNamesOfFiles() {
        ChartNote note = StudyFactory.eINSTANCE.createChartNote();
        note.setChart("electric_bill");
        note.setShown("Electric, 2030");
        assertNames("electric_bill: Electric, 2030", "chart note Electric bill: Electric, 2030", note);
    }

    @Test
    void workOrdersNameYearAndWork() {
        SiteWork work = DepotFactory.eINSTANCE.createSiteWork();
        work.setName("Trench");
        WorkOrder order = PlansFactory.eINSTANCE.createWorkOrder();
        assertEquals("2027 ?", ElementNames.of(order));
        order.setWork(work);
        assertEquals("2027 Trench", ElementNames.of(order));
    }

    @Test
    void rowsOfATariffAreToldApart() {
        TariffCharge row = DepotFactory.eINSTANCE.createTariffCharge();
        assertEquals("?", ElementNames.of(row));
        row.setCharge("Off-peak energy");
        assertEquals("Off-peak energy", ElementNames.of(row));
        row.setFirstMonth(Month.OCTOBER);
        row.setLastMonth(Month.MAY);
        row.setDays(TariffDays.WEEKDAYS);
        row.setFromMin(1320);
        row.setToMin(360);
        row.setFromKwh(5000);
        assertEquals("Off-peak energy, October to May, weekdays, 22:00 to 6:00, from 5000 kWh", ElementNames.of(row));
    }

    @Test
    void rowsOfATariffAreToldApartByYearsOfService() {
        TariffCharge row = DepotFactory.eINSTANCE.createTariffCharge();
        row.setCharge("Demand");
        row.setLastContractYear(3);
        assertEquals("Demand, years 1 to 3", ElementNames.of(row));
        row.setFirstContractYear(3);
        assertEquals("Demand, year 3", ElementNames.of(row));
        row.setLastContractYear(99);
        assertEquals("Demand, from year 3", ElementNames.of(row));
    }

    @Test
    void elementsWithoutNameGoByTheirPlace() {
        small.bus.setName(null);
        assertNames("no. 1", "bus no. 1", small.bus);
        small.study.setName("");
        assertNames("without name", "study without name", small.study);
    }

    /** What a new element is called tells its kind; files go on telling both. */
    @Test
    void aKindIsNotToldTwice() {
        UncertainInput input = WhatifFactory.eINSTANCE.createUncertainInput();
        input.setName("Uncertain input 9");
        assertEquals("Uncertain input 9", ElementNames.told(input));
        assertEquals("uncertain input Uncertain input 9", ElementNames.withKind(input));
        input.setName("Uncertain inputs");
        assertEquals("uncertain input Uncertain inputs", ElementNames.told(input));
    }

    private static void assertNames(String name, String withKind, EObject element) {
        assertEquals(name, ElementNames.of(element));
        assertEquals(withKind, ElementNames.withKind(element));
    }
}
