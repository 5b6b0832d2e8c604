package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.report.document.DocumentFormat;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Studies that lack what documents usually speak of, or speak otherwise, have documents too. */
class OddStudiesTest {
    private static final ExamplePapers EXAMPLE = new ExamplePapers();
    private static final List<DocumentKind> KINDS = List.of(DocumentKind.GRANT, DocumentKind.BOARD, DocumentKind.UTILITY,
            DocumentKind.SHOP,
            DocumentKind.CASH_FLOW);

    /** What is odd about a study. */
    enum Odd {
        NOTHING_BUT_A_BASELINE(s -> {
            List<Plan> others = s.getPlans().stream().filter(p -> p != s.getBaseline()).toList();
            others.forEach(p -> EcoreUtil.delete(p, true));
            s.setDescription("");
        }),
        NO_PROGRAMMES(s -> List.copyOf(s.getProgrammes()).forEach(p -> EcoreUtil.delete(p, true))),
        METRIC_WITHOUT_TASKS_AND_TRIPS(s -> {
            s.getSettings().setUnits(UnitChoice.METRIC);
            s.getMaintenanceTasks().clear();
            s.getTrips().clear();
        }),
        HOSTILE_NAMES(s -> {
            s.setName("=1+1 <&\"'> [a]:*?/\\ \u0007");
            s.getPlans().get(1).setName("-<b>&\"quoted\" & long name that no sheet of a workbook could ever bear in full");
        }),
        ONE_YEAR(s -> s.getSettings().setHorizonYears(1));

        private final Consumer<Study> change;

        Odd(Consumer<Study> change) {
            this.change = change;
        }
    }

    @ParameterizedTest
    @EnumSource(Odd.class)
    void haveDocumentsToo(Odd odd) throws Exception {
        Study study = EXAMPLE.study();
        odd.change.accept(study);
        StudyResult result = EXAMPLE.evaluated(study);
        PaperInput in = new PaperInput(result, result.plans().size() > 1 ? 1 : 0, StudyFacts.of(study), PaperChoices.STANDARD);
        Set<DocumentFormat> formats = odd == Odd.HOSTILE_NAMES ? Set.of(DocumentFormat.values()) : Set.of(DocumentFormat.HTML,
                DocumentFormat.XLSX);
        for (DocumentKind kind : KINDS) {
            Map<String, byte[]> files = kind.files(in, formats, Progress.NONE);
            assertFalse(files.isEmpty());
            files.forEach((name, bytes) -> assertTrue(bytes.length > 1000, name));
            if (odd == Odd.HOSTILE_NAMES && files.keySet().stream().anyMatch(f -> f.endsWith(".html"))) {
                String html = new String(files.entrySet().stream().filter(e -> e.getKey().endsWith(".html")).findFirst()
                        .orElseThrow().getValue(),
                        StandardCharsets.UTF_8);
                assertFalse(html.contains("<b>&\"quoted") || html.contains("\u0007"));
            }
        }
    }
}
