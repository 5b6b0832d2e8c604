package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.report.ResultFolder;
import org.amberyard.report.ResultTable;
import org.amberyard.report.WhatIfTables;
import org.amberyard.report.WhatIfWords;
import org.amberyard.study.StudyUnits;
import org.amberyard.study.whatif.WhatIfRun;

/** Runs the what-if of a study and writes its tables and charts. */
final class WhatIfVerb implements Verb {
    private static final String OUT = "--out";
    private static final String KEPT = "--kept";

    @Override
    public String name() {
        return "what-if";
    }

    @Override
    public String usage() {
        return "what-if STUDY " + OUT + " DIR [" + KEPT + "] " + WhatIfStudy.USAGE + " " + GridOption.USAGE;
    }

    @Override
    public String summary() {
        return "varies the uncertain inputs of STUDY one at a time, two together (those that --grid or STUDY names, else the two widest) and all "
                + "together, runs its scenarios, and "
                + "writes tables and charts into DIR; the same study and seed give the same figures on any number of threads; " + KEPT
                + " runs nothing and writes the what-if that is "
                + "kept beside STUDY, with what has changed since if it is of an earlier version of the study";
    }

    @Override
    public Set<String> options() {
        return Stream.of(Set.of(OUT), WhatIfStudy.options(), GridOption.options()).flatMap(Set::stream).collect(Collectors.toSet());
    }

    @Override
    public Set<String> flags() {
        return Set.of(KEPT);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        int threads = WhatIfStudy.threads(arguments);
        return ThreadLimit.run(threads, () -> run(threads, arguments, console));
    }

    private static int run(int threads, Arguments arguments, Console console) throws WrongUse, IOException {
        Path folder = arguments.path(OUT, console.folder());
        if (arguments.has(KEPT)) {
            WhatIfStudy.refuseSettings(arguments, KEPT);
            GridOption.refuse(arguments, KEPT);
            KeptWhatIf.beside(arguments.study(console.folder())).write(folder, console);
            return ExitCode.DONE;
        }
        Optional<WhatIfStudy> asked = WhatIfStudy.of(arguments, console, GridOption::take);
        if (asked.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        WhatIfRun run = new WhatIfRun(asked.get().study(), asked.get().base(), threads, Optional.empty());
        workOut(run, StudyUnits.of(asked.get().study()), folder, console);
        return ExitCode.DONE;
    }

    /** Works a run out and writes what it has found, also when a draw fails before its end. */
    static void workOut(WhatIfRun run, UnitSystem units, Path folder, Console console) throws IOException {
        try {
            run.run(ProgressLines.timed(console.err(), "What if"), soFar -> {});
        } finally {
            WhatIfResults results = run.results();
            if (results.single().isPresent()) {
                write(results, List.of(WhatIfTables.stages(results.inputs().names(), run.whatIf().stages())), units, folder, console);
            }
        }
    }

    static void write(WhatIfResults results, List<ResultTable> more, UnitSystem units, Path folder, Console console) throws IOException {
        ResultFolder.write(results, more, units, folder);
        WhatIfWords.of(results).forEach(sentence -> console.out().println(sentence + System.lineSeparator()));
        TwoTogether.whyNone(results.inputs()).ifPresent(why -> console.out().println(why + "." + System.lineSeparator()));
        console.out().println("Results are in " + folder);
    }
}
