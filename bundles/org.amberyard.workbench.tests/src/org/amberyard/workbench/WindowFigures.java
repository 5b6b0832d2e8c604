package org.amberyard.workbench;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.SitePackage;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.charts.ChartCanvas;
import org.amberyard.workbench.session.Evaluation;
import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/**
 * What passes in a real window from an edit of the example until its results are known and every chart in sight shows them. It
 * prints figures and asks nothing of them, so it is no test of the build; {@code sh releng/bench window} runs it.
 */
@ExtendWith(WorkbenchExtension.class)
class WindowFigures {
    private static final int WARM = 30;
    private static final int ROUNDS = 60;
    private static final int REST_MS = 300;
    private static final double NANOS_PER_MS = 1e6;
    private static final double HIGH_SHARE = 0.95;

    @TempDir
    private Path folder;

    private record Edit(String name, EObject element, EAttribute feature, IntFunction<Object> value) {
    }

    /** Times in milliseconds. */
    private record Answer(double resultMs, double chartsMs) {
    }

    @Test
    void fromAnEditToItsCharts(Display display) throws IOException {
        try (OpenStudy open = OpenStudy.inFolder(display, folder)) {
            for (Edit edit : edits(open.study())) {
                List<Answer> answers = new ArrayList<>();
                for (int round = 0; round < WARM + ROUNDS; round++) {
                    answers.add(answer(open, edit, round));
                    OpenStudy.pause(REST_MS);
                }
                List<Answer> measured = answers.subList(WARM, answers.size());
                System.out.printf(Locale.ROOT, "%s: results %s; charts %s%n", edit.name,
                        words(measured.stream().map(Answer::resultMs).sorted().toList()),
                        words(measured.stream().map(Answer::chartsMs).sorted().toList()));
            }
        }
    }

    private static List<Edit> edits(Study study) {
        TariffCharge charge = ((ScheduledTariff) study.getDepot().getTariff()).getCharges().get(0);
        FuelPrice fuel = study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast).findFirst().orElseThrow();
        MonthClimate month = study.getSite().getClimate().get(0);
        Bus bus = study.getBuses().get(0);
        return List.of(number("an edited price of fuel", fuel, PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, 1e-4),
                number("an edited price of a tariff", charge, DepotPackage.Literals.TARIFF_CHARGE__PRICE_PER_KWH, 1e-4),
                number("an edited temperature", month, SitePackage.Literals.MONTH_CLIMATE__MEAN_LOW_C, -1e-2),
                new Edit("an edited model year", bus, FleetPackage.Literals.BUS__MODEL_YEAR, round -> 2009 + round % 2));
    }

    private static Edit number(String name, EObject element, EAttribute feature, double step) {
        double start = (Double) element.eGet(feature);
        return new Edit(name, element, feature, round -> start + (round + 1) * step);
    }

    private static Answer answer(OpenStudy open, Edit edit, int round) {
        StudyResult before = open.result();
        long start = System.nanoTime();
        open.display().syncExec(() -> {
            Command command = SetCommand.create(open.session().domain(), edit.element, edit.feature, edit.value.apply(round));
            open.session().execute(command);
        });
        double resultMs = Double.NaN;
        while (true) {
            boolean known = open.display().syncCall(() -> isKnown(open, before));
            resultMs = known && Double.isNaN(resultMs) ? ms(start) : resultMs;
            if (known && open.display().syncCall(() -> chartsAreDone())) {
                return new Answer(resultMs, ms(start));
            }
            OpenStudy.pause(1);
        }
    }

    private static boolean isKnown(OpenStudy open, StudyResult before) {
        Evaluation now = open.session().evaluation();
        return now.phase() == Evaluation.Phase.CURRENT && now.result().orElseThrow() != before;
    }

    private static boolean chartsAreDone() {
        Composite window = OpenStudy.page().getWorkbenchWindow().getShell();
        return View.all(window, ChartCanvas.class).stream().noneMatch(canvas -> canvas.isVisible() && canvas.isUnderWay());
    }

    private static double ms(long start) {
        return (System.nanoTime() - start) / NANOS_PER_MS;
    }

    private static String words(List<Double> sortedMs) {
        return String.format(Locale.ROOT, "%.0f ms, %.0f of 100 within %.0f ms", sortedMs.get(sortedMs.size() / 2), 100 * HIGH_SHARE,
                sortedMs.get((int) Math.ceil(HIGH_SHARE * sortedMs.size()) - 1));
    }
}
