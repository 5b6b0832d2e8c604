package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.report.ResultFolder;
import org.amberyard.report.WhatIfTables;
import org.amberyard.report.WhatIfWords;
import org.amberyard.study.whatif.WhatIfRun;

/** Runs the what-if of a study and writes its tables and charts. */
final class WhatIfVerb implements Verb {
    private static final String OUT = "--out";

    @Override
    public String name() {
        return "what-if";
    }

    @Override
    public String usage() {
        return "what-if STUDY " + OUT + " DIR " + WhatIfStudy.USAGE;
    }

    @Override
    public String summary() {
        return "varies the uncertain inputs of STUDY one at a time, the two widest together and all together, runs its scenarios, and "
                + "writes tables and charts into DIR; the same study and seed give the same figures on any number of threads";
    }

    @Override
    public Set<String> options() {
        return Stream.concat(Stream.of(OUT), WhatIfStudy.options().stream()).collect(Collectors.toSet());
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        Path folder = arguments.path(OUT, console.folder());
        Optional<WhatIfStudy> asked = WhatIfStudy.of(arguments, console);
        if (asked.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        WhatIfRun run = new WhatIfRun(asked.get().study(), asked.get().base(), asked.get().threads(), Optional.empty());
        run.run(ProgressLines.timed(console.err(), "What if"), soFar -> {
        });
        WhatIfResults results = run.results();
        ResultFolder.write(results, List.of(WhatIfTables.stages(results.inputs().names(), run.whatIf().stages())), folder);
        WhatIfWords.of(results).forEach(sentence -> console.out().println(sentence + System.lineSeparator()));
        console.out().println("Results are in " + folder);
        return ExitCode.DONE;
    }
}
