package org.amberyard.study.whatif;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Scenario;
import org.amberyard.model.whatif.ScenarioChange;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.study.StudyCompiler;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Variants of a study, made on a copy of it. For use from one thread. */
final class StudyVariants {
    private final Study copy;
    private final List<InputChange> changes = new ArrayList<>();
    private final List<String[]> words = new ArrayList<>();

    /** Variants of a study with a what-if; the study itself stays as it is. */
    StudyVariants(Study study) {
        copy = EcoreUtil.copy(study);
        for (UncertainInput input : copy.getWhatIf().getInputs()) {
            InputChange change = new InputChange(copy, input.getKind(), input.getElement(), input.getField(), input.getEffect());
            changes.add(change);
            words.add(change.ofWords() ? InputDistribution.words(input) : new String[0]);
        }
    }

    InputChange change(int input) {
        return changes.get(input);
    }

    /**
     * The study with the uncertain inputs at values; not a number leaves an input as it is, as does a negative place of a word.
     *
     * @throws IllegalArgumentException when a field does not allow what it would hold
     */
    StudyInput at(double[] values) {
        for (int input = 0; input < values.length; input++) {
            InputChange change = changes.get(input);
            if (Double.isNaN(values[input]) || change.ofWords() && values[input] < 0) {
                change.putBack();
            } else if (change.ofWords()) {
                change.take(words.get(input)[(int) Math.round(values[input])]);
            } else {
                change.take(values[input]);
            }
        }
        return StudyCompiler.compile(copy);
    }

    /** The study in one of its scenarios. */
    StudyInput in(int scenario) {
        Scenario of = copy.getWhatIf().getScenarios().get(scenario);
        List<InputChange> made = new ArrayList<>();
        try {
            for (ScenarioChange change : of.getChanges()) {
                InputChange now = new InputChange(copy, change.getKind(), change.getElement(), change.getField(), change.getEffect());
                made.add(now);
                if (now.ofWords()) {
                    now.take(change.getChoice());
                } else {
                    now.take(change.getNumber());
                }
            }
            return StudyCompiler.compile(copy);
        } finally {
            for (int i = made.size() - 1; i >= 0; i--) {
                made.get(i).putBack();
            }
        }
    }
}
