package org.amberyard.batch;

import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.study.StudyEvaluator;

/** The program without a window, in plain Java: chooses the verb, and turns what goes wrong into messages and exit codes. */
public final class CommandLine {
    private static final Set<String> HELP = Set.of("--help", "-h");

    private final List<Verb> verbs;
    private final StudyEvaluator evaluator;

    /** With the verbs of the program. */
    public CommandLine() {
        this(new StudyEvaluator());
    }

    CommandLine(StudyEvaluator evaluator) {
        this(List.of(new EvaluateVerb(), new EvaluateAllVerb(), new CheckVerb(), new ImportVerb(), new ExportVerb(),
                new ImportTraceVerb(), new ImportMeterVerb(), new ImportTableVerb(), new TableTemplateVerb(), new ImportWeatherVerb(), new ImportGtfsVerb(),
                new FitCurveVerb(), new TaskSheetVerb(), new BillVerb(), new WhyVerb(), new FillPlanVerb(), new LevelPlanVerb(),
                new BestPlanVerb(), new RollYearVerb(), new WhatIfVerb(), new SweepVerb(), new DocumentsVerb(), new FreezeVerb(), new CompareFrozenVerb()),
                evaluator);
    }

    CommandLine(List<Verb> verbs, StudyEvaluator evaluator) {
        this.verbs = List.copyOf(verbs);
        this.evaluator = evaluator;
    }

    /**
     * Runs one command.
     *
     * @param args words of the command line
     * @param cwd the caller's working folder, against which relative paths are resolved
     * @param out for results
     * @param err for everything else
     * @return exit code, see {@link ExitCode}
     */
    public int run(List<String> args, Path cwd, PrintStream out, PrintStream err) {
        if (args.stream().anyMatch(HELP::contains) || args.equals(List.of("help"))) {
            out.print(help());
            return ExitCode.DONE;
        }
        try {
            Verb verb = verb(args);
            return verb.run(Arguments.of(verb, args.subList(1, args.size())), new Console(cwd, out, err, evaluator));
        } catch (WrongUse e) {
            err.println(e.getMessage());
            return ExitCode.WRONG_USE;
        } catch (IOException | RuntimeException e) {
            report(e, args.contains(Arguments.DEBUG), err);
            return ExitCode.FAULT;
        }
    }

    private Verb verb(List<String> args) throws WrongUse {
        String names = verbs.stream().map(Verb::name).collect(Collectors.joining(", "));
        if (args.isEmpty()) {
            throw new WrongUse("A verb is missing; allowed: " + names + ". See --help.");
        }
        return verbs.stream().filter(v -> v.name().equals(args.get(0))).findFirst().orElseThrow(
                () -> new WrongUse("“" + args.get(0) + "” is no verb; allowed: " + names + ". See --help."));
    }

    private String help() {
        StringBuilder text = new StringBuilder(String.format("Usage:%n"));
        for (Verb verb : verbs) {
            text.append(String.format("  amberyard %s%n      %s%n", verb.usage(), verb.summary()));
        }
        return text.append(String.format("Options of every verb:%n  %s   prints where a fault arose%n  --help    prints this%n"
                + "Returns 0 when done, 1 after a fault in the program, 2 when the command or the study has to be put right,%n"
                + "4 when something differs from what was frozen.%n",
                Arguments.DEBUG)).toString();
    }

    private static void report(Exception fault, boolean debug, PrintStream err) {
        err.println("The program failed: " + fault);
        if (debug) {
            fault.printStackTrace(err);
            return;
        }
        try {
            Path log = Files.createTempFile("amberyard-fault-", ".log");
            try (PrintWriter out = new PrintWriter(Files.newBufferedWriter(log))) {
                fault.printStackTrace(out);
            }
            err.println("Details are in " + log + "; " + Arguments.DEBUG + " prints them here.");
        } catch (IOException e) {
            fault.addSuppressed(e);
            fault.printStackTrace(err);
        }
    }
}
