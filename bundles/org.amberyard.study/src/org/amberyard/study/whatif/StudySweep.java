package org.amberyard.study.whatif;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.Block;
import org.amberyard.core.whatif.BlockSink;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.model.study.Study;

/**
 * All draws of a what-if as rows, handed on as they are worked out and not kept: inputs, then for each plan what it comes to. Every
 * row is evaluated, also where the study asks for draws that are read off fitted surfaces.
 */
public final class StudySweep {
    private final StudyWhatIf whatIf;

    /**
     * @param study a study with a what-if
     * @param base its results
     * @param threads threads that work at the same time
     */
    public StudySweep(Study study, StudyResult base, int threads) {
        this.whatIf = new StudyWhatIf(study, base, threads);
    }

    /** Headers of the columns: the uncertain inputs, for each plan present cost, greenhouse gas and appropriations by year. */
    public List<String> columns() {
        List<String> columns = new ArrayList<>(whatIf.names());
        StudyInput input = whatIf.base().input();
        for (PlanResult plan : whatIf.base().plans()) {
            columns.add(plan.name() + ", present cost (" + input.currency() + ")");
            columns.add(plan.name() + ", greenhouse gas (kg CO2e)");
            for (int year = 0; year < input.years(); year++) {
                columns.add(plan.name() + ", appropriation " + (input.baseYear() + year) + " (" + input.currency() + ")");
            }
        }
        columns.add("Evaluated as a whole (1) or by prices (0)");
        return columns;
    }

    /** Of the study and its draws; a sweep of the same goes on where another ended. */
    public String fingerprint() {
        return StudyFingerprint.of(whatIf.study());
    }

    /** Number of rows. */
    public int rows() {
        return whatIf.together().count();
    }

    /**
     * Works rows out.
     *
     * @param first the first that is wanted: 0, or where an earlier run ended
     * @param sink takes blocks of rows in their order, on this thread
     */
    public RunEnd run(int first, BlockSink sink, Progress progress) {
        Evaluations draws = whatIf.together();
        return whatIf.outcomes().run(draws, whatIf.threads(), first, block -> sink.take(withInputs(block, draws)), progress);
    }

    private static Block withInputs(Block block, Evaluations draws) {
        int inputs = draws.values().apply(block.firstDraw()).length;
        double[][] columns = new double[inputs + block.columns().length][];
        System.arraycopy(block.columns(), 0, columns, inputs, block.columns().length);
        for (int input = 0; input < inputs; input++) {
            columns[input] = new double[block.draws()];
        }
        for (int row = 0; row < block.draws(); row++) {
            double[] values = draws.values().apply(block.firstDraw() + row);
            for (int input = 0; input < inputs; input++) {
                columns[input][row] = values[input];
            }
        }
        return new Block(block.firstDraw(), columns);
    }
}
