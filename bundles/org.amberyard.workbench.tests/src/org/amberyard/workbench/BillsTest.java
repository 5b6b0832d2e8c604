package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.MeterBill;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.grid.GridModel;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** The example's printed bill on its page, and bills of other policies and tariffs in their view. */
@ExtendWith(WorkbenchExtension.class)
class BillsTest {

    @TempDir
    private Path folder;

    private static List<String> row(GridModel model, int row) {
        return IntStream.range(0, model.columns()).mapToObj(c -> model.text(row, c)).toList();
    }

    @Test
    void aPrintedBillIsTypedLineByLineAndUndone(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            MeterBill bill = study.study().getDepot().getMeterBills().get(0);
            Grid bills = study.goTo(bill, Literals.METER_BILL__TOTAL);
            assertTrue(display.syncCall(() -> row(bills.model(), 0)).containsAll(List.of("KE-2026-02", "2026-01-08", "2026-02-06", "KE-GS-TOU")));
            Grid lines = study.goTo(bill.getLines().get(5), Literals.METER_BILL_LINE__AMOUNT);
            assertEquals("On-peak demand, winter", display.syncCall(() -> lines.model().text(5, 0)));
            assertEquals(8, display.syncCall(() -> lines.model().rows()));
            Grid days = study.goTo(study.study().getDepot().getMeterDays().get(8), Literals.METER_DAY__DATE);
            assertEquals("86.7", display.syncCall(() -> days.model().text(8, days.model().columns() - 1)));
        }
    }

    @Test
    void theBillOfAnyPolicyOnAnyTariffIsChosen(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid lines = display.syncCall(() -> {
                OpenStudy.page().showView("org.amberyard.workbench.billLines");
                return (Grid) display.getFocusControl();
            });
            study.await(() -> lines.model().rows() > 3);
            display.syncExec(() -> {
                study.session().choices().choose(Kind.POLICY, new Chosen(ChargePolicy.CAPPED.label(), ChargePolicy.CAPPED.ordinal()));
                study.session().choices().choose(Kind.TARIFF, new Chosen("KE-GS-TOU", 1));
            });
            study.await(() -> IntStream.range(0, lines.model().rows()).anyMatch(r -> lines.model().text(r, 0).equals("Facilities demand")));
            assertTrue(display.syncCall(() -> IntStream.range(0, lines.model().rows()).mapToObj(r -> lines.model().text(r, 0)).toList())
                    .containsAll(List.of("Without charging", "Charging adds")), "the tariff shares the building's meter");
        }
    }
}
