package org.amberyard.study.whatif;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.progress.Progress;

/** What the parts of a what-if take. */
final class RunPlan {
    /** About as many as a search for break-evens takes. */
    private static final int SEARCH_EVALUATIONS = 35;

    private final StudyWhatIf whatIf;
    private final int single;
    private final int shares;
    private final boolean fitted;
    private final Evaluations fit;
    private final boolean readOff;

    /**
     * @param step of {@link FitSteps}, up to which evaluations are fitted to and checked on
     * @param readOff true when draws are read off surfaces, so that very many cost nothing
     */
    RunPlan(StudyWhatIf whatIf, int step, boolean readOff) {
        this.whatIf = whatIf;
        this.readOff = readOff;
        this.single = whatIf.single().count();
        this.shares = whatIf.shares(readOff).count();
        this.fitted = FittedDraws.wanted(whatIf);
        this.fit = fitted ? FitSteps.of(whatIf).evaluations(step) : new Evaluations(0, e -> new double[0]);
    }

    /** The parts that the study has, by its widest inputs. */
    List<RunPart> parts(int[] widest) {
        List<RunPart> parts = new ArrayList<>(List.of(RunPart.SINGLE));
        if (!whatIf.study().getWhatIf().getScenarios().isEmpty()) {
            parts.add(RunPart.SCENARIOS);
        }
        if (fitted) {
            parts.add(RunPart.FIT);
        }
        parts.add(RunPart.ALL);
        if (whatIf.grid(widest).exists()) {
            parts.add(RunPart.GRID);
        }
        parts.add(RunPart.SHARES);
        parts.add(RunPart.BREAK_EVENS_ALONE);
        if (widest.length > 1) {
            parts.add(RunPart.BREAK_EVEN);
        }
        if (widest.length > 2) {
            parts.add(RunPart.BREAK_EVEN_SURFACE);
        }
        return parts;
    }

    /** Evaluations of a part. */
    int count(RunPart part) {
        return switch (part) {
            case SINGLE -> single;
            case SCENARIOS -> whatIf.study().getWhatIf().getScenarios().size();
            case FIT -> fit.count();
            case ALL -> whatIf.study().getWhatIf().getDraws();
            case GRID -> GridPart.count(whatIf);
            case SHARES -> shares;
            case BREAK_EVENS_ALONE, BREAK_EVEN, BREAK_EVEN_SURFACE -> SEARCH_EVALUATIONS * new BreakEvenParts(whatIf).count(part);
        };
    }

    /** Variants of a part. */
    Evaluations of(RunPart part, int[] widest) {
        return switch (part) {
            case SINGLE -> whatIf.single();
            case FIT -> fit;
            case ALL -> whatIf.together();
            case GRID -> whatIf.grid(widest).evaluations();
            case SHARES -> whatIf.shares(readOff);
            case SCENARIOS, BREAK_EVENS_ALONE, BREAK_EVEN, BREAK_EVEN_SURFACE -> throw new IllegalArgumentException(part.label() + " has no list of variants");
        };
    }

    /** Progress of a part as part of the whole. */
    Progress share(Progress whole, RunPart part) {
        double all = 0;
        double before = 0;
        for (RunPart each : RunPart.values()) {
            all += count(each);
            before += each.ordinal() < part.ordinal() ? count(each) : 0;
        }
        double from = before / all;
        double length = count(part) / all;
        return done -> whole.at(from + length * done);
    }
}
