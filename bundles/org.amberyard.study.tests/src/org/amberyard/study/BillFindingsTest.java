package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.audit.AuditVerdict;
import org.amberyard.core.audit.BillAudit;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.MeterBill;
import org.amberyard.model.depot.MeterDay;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The invented bill of the example's building, which its tariff asks to within 0.3 %. */
class BillFindingsTest {
    private Study study;
    private MeterBill bill;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        bill = study.getDepot().getMeterBills().get(0);
    }

    private BillAudit audit() {
        return BillCompiler.compile(study.getDepot()).audits().get(0);
    }

    private List<String> found() {
        return new BillFindings(study, BillCompiler.compile(study.getDepot()).audits()).list().stream().map(Finding::message).toList();
    }

    @Test
    void theExampleAgrees() {
        assertEquals(AuditVerdict.AGREES, audit().verdict());
        assertEquals(-13.34, audit().difference().orElseThrow(), 1e-9);
        assertEquals(29_075.575, audit().meteredKwh(), 1e-6);
        assertEquals(List.of(), found());
    }

    @Test
    void dataAreNamedBeforeTheTariff() {
        bill.setTotal(4600.0);
        bill.setEnergyKwh(31_000.0);
        assertEquals(List.of("Bill KE-2026-02: tariff KE-GS-TOU asks 350.01 (7.6 %) less than was printed. The meter’s data sum to 29,076 kWh but "
                + "31,000 kWh were billed; look at the data before the tariff."), found());
        bill.setEnergyKwh(null);
        bill.setDemandKw(90.0);
        assertEquals(List.of("Bill KE-2026-02: tariff KE-GS-TOU asks 350.01 (7.6 %) less than was printed. The meter’s data peak at 86.7 kW but "
                + "90.0 kW were billed; look at the data before the tariff."), found());
    }

    @Test
    void earlierMonthsOfARatchetAreNamed() {
        bill.setTotal(4600.0);
        assertEquals(List.of("Bill KE-2026-02: tariff KE-GS-TOU asks 350.01 (7.6 %) less than was printed. Compare the lines; demands of earlier "
                + "months, at which a ratchet looks back, are not all known."), found());
    }

    @Test
    void missingDaysAreNamedAndNothingIsComputed() {
        study.getDepot().getMeterDays().remove(4);
        assertEquals(List.of("Bill KE-2026-02 cannot be worked out again: the meter’s data lack 2026-01-11; import interval data of these days."), found());
    }

    /** The tariff in use stands in where the bill names none. */
    @Test
    void theTariffInUseIsTakenWhereNoneIsNamed() {
        bill.setTariff(null);
        assertEquals("KE-EVD", audit().bill().tariff().name());
    }

    /** Another bill of the same name, and one whose period is not known before both: what is found goes to the bill that it is of. */
    @Test
    void whatIsFoundGoesToItsBill() {
        MeterBill other = EcoreUtil.copy(bill);
        study.getDepot().getMeterBills().add(0, DepotFactory.eINSTANCE.createMeterBill());
        study.getDepot().getMeterBills().add(other);
        other.setTotal(4600.0);
        List<Finding> found = new BillFindings(study, BillCompiler.compile(study.getDepot()).audits()).list();
        assertEquals(1, found.size());
        assertSame(other, found.get(0).element());
    }

    /** Of 4,240 in lines one has not been entered; where the bill tells its total, only that line is missing. */
    @Test
    void aLineWithoutAmountIsLeftOutInWords() {
        bill.getLines().get(1).setAmount(null);
        String name = bill.getLines().get(1).getLine();
        assertEquals(List.of(name), audit().bill().printed().without());
        assertEquals(bill.getLines().size() - 1, audit().bill().printed().lines().size());
        assertEquals(List.of(), found());
        bill.setTotal(null);
        assertEquals(1, found().stream().filter(m -> m.endsWith(
                "Amounts of lines of the bill have not been entered: " + name + "; enter them or the total first.")).count());
    }

    /** A bill that is half entered, a day twice and one with a series that is none stop no study. */
    @Test
    void unfinishedBillsAndDaysStopNoStudy() {
        study.getDepot().getMeterBills().add(DepotFactory.eINSTANCE.createMeterBill());
        study.getDepot().getMeterDays().add(EcoreUtil.copy(study.getDepot().getMeterDays().get(0)));
        MeterDay broken = DepotFactory.eINSTANCE.createMeterDay();
        broken.setDate("2026-03-01");
        broken.setLoadKw("1 2 three");
        study.getDepot().getMeterDays().add(broken);
        assertTrue(StudyFindings.canEvaluate(StudyFindings.of(study)));
        assertEquals(-13.34, audit().difference().orElseThrow(), 1e-9);
    }
}
