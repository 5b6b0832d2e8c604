package org.amberyard.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.DrawFailedException;
import org.amberyard.exchange.WhatIfFile;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.Shape;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifFactory;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.whatif.SavedRun;
import org.amberyard.study.whatif.WhatIfRun;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the example's what-if leaves in a folder, with its first price and a choice of policies. */
class WhatIfVerbTest {
    private static final String STUDY = "district.amberyard";
    private static final Path EXAMPLE = Path.of(System.getProperty("basedir", "."))
            .resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize();

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    private int run(String... words) {
        return new CommandLine().run(List.of(words), folder, new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
    }

    private Study example() throws Exception {
        Study study = StudyFile.load(EXAMPLE);
        study.getWhatIf().getScenarios().clear();
        study.getWhatIf().getInputs().subList(1, study.getWhatIf().getInputs().size()).clear();
        return study;
    }

    /** A choice of words is no input of a grid, so with one price beside it there is none; nor are there scenarios. */
    @Test
    void aPriceAndAChoiceAreVariedAndTold() throws Exception {
        Study study = example();
        UncertainInput policy = WhatifFactory.eINSTANCE.createUncertainInput();
        policy.setName("Policy");
        policy.setKind("Depot");
        policy.setField("chargingPolicy");
        policy.setEffect(Effect.VALUE);
        policy.setShape(Shape.LIST);
        policy.setChoices("at once; least cost");
        study.getWhatIf().getInputs().add(policy);
        StudyFile.save(study, folder.resolve(STUDY));

        assertEquals(0, run("what-if", STUDY, "--out", "out", "--draws", "10"), err.toString(StandardCharsets.UTF_8));

        try (Stream<Path> files = Files.list(folder.resolve("out"))) {
            Set<String> names = new TreeSet<>(files.map(f -> f.getFileName().toString()).toList());
            assertEquals(Set.of("stages_touched.csv", "tornado.csv", "variance_shares.csv", "what_if_budget.csv", "what_if_summary.csv",
                    "what_if_spent.csv", "what_if_regret.csv", "what_if_regret_spread.csv", "what_if_prices.csv", "what_if_inputs.csv",
                    "what_would_have_to_be_true.csv"),
                    names.stream().filter(n -> n.endsWith(".csv")).collect(Collectors.toSet()));
            assertTrue(names.containsAll(Set.of("what_if_tornado.png", "what_if_tornado.svg", "what_if_tornado.txt",
                    "what_if_convergence.png")), names.toString());
        }
        String tornado = Files.readString(folder.resolve("out/tornado.csv"));
        assertTrue(tornado.contains("Electric in stages,Policy,at once,least cost,"), tornado);
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("“Electric in stages” costs less than “Like for like” in 0 % of 10 "
                + "draws"), out.toString(StandardCharsets.UTF_8));
        assertTrue(out.toString(StandardCharsets.UTF_8).contains("Only one uncertain input, “Diesel price”, takes any value of a range; a grid "
                + "of two inputs takes a second one."), out.toString(StandardCharsets.UTF_8));
    }

    /** The study's own choice, that of the command line over it, and the paper of the appendix. */
    @Test
    void theGridIsOfTheInputsThatAreChosen() throws Exception {
        Study study = StudyFile.load(EXAMPLE);
        study.getWhatIf().getScenarios().clear();
        study.getWhatIf().getInputs().subList(4, study.getWhatIf().getInputs().size()).clear();
        study.getWhatIf().getCorrelations().clear();
        study.getWhatIf().setDraws(10);
        study.getWhatIf().setGridAcross(study.getWhatIf().getInputs().get(3));
        study.getWhatIf().setGridUpward(study.getWhatIf().getInputs().get(0));
        study.getWhatIf().setGridRows(4);
        StudyFile.save(study, folder.resolve(STUDY));

        assertEquals(0, run("what-if", STUDY, "--out", "own"), err.toString(StandardCharsets.UTF_8));
        List<String> own = Files.readAllLines(folder.resolve("own/what_if_grid.csv"));
        assertEquals("Plan,Demand charge rise,Diesel price,Saving (USD)", own.get(0));
        assertEquals(1 + 11 * 4 * (study.getPlans().size() - 1), own.size());

        assertEquals(0, run("what-if", STUDY, "--out", "asked", "--grid", "Diesel price;Electricity rise", "--grid-steps", "3x5"),
                err.toString(StandardCharsets.UTF_8));
        List<String> asked = Files.readAllLines(folder.resolve("asked/what_if_grid.csv"));
        assertEquals("Plan,Diesel price,Electricity rise,Saving (USD)", asked.get(0));
        assertEquals(1 + 3 * 5 * (study.getPlans().size() - 1), asked.size());
    }

    @Test
    void aGridThatCannotBeIsRefused() throws Exception {
        StudyFile.save(StudyFile.load(EXAMPLE), folder.resolve(STUDY));
        assertEquals(2, run("what-if", STUDY, "--out", "out", "--grid", "Diesel price"));
        assertEquals(2, run("what-if", STUDY, "--out", "out", "--grid", "Diesel price;Bread"));
        assertEquals(2, run("what-if", STUDY, "--out", "out", "--grid-steps", "25x52"));
        assertEquals(2, run("what-if", STUDY, "--out", "out", "--grid", "Diesel price;Diesel price"));
        assertEquals(2, run("what-if", STUDY, "--out", "out", "--kept", "--grid", "Diesel price;Electricity rise"));
        String said = err.toString(StandardCharsets.UTF_8) + out.toString(StandardCharsets.UTF_8);
        assertTrue(said.contains("--grid is “Diesel price”; it must name two uncertain inputs with a semicolon between them."), said);
        assertTrue(said.contains("--grid is “Bread”; it must be one of Diesel price, "), said);
        assertTrue(said.contains("--grid-steps is “25x52”; it must be a whole number from 3 to 51, or two of them with an x between them."), said);
        assertTrue(said.contains("“Diesel price” runs across the grid already"), said);
        assertTrue(said.contains("--grid cannot be given with --kept, which runs nothing."), said);
    }

    /** Prices below 0, which a check of the study would refuse, come up among the draws only. */
    @Test
    void whatWasFoundBeforeADrawFailsIsWritten() throws Exception {
        Study study = example();
        study.getWhatIf().setDraws(100);
        UncertainInput diesel = study.getWhatIf().getInputs().get(0);
        diesel.setShape(Shape.UNIFORM);
        diesel.setLow(-0.15);
        diesel.setHigh(2);
        StudyEvaluator evaluator = new StudyEvaluator();
        WhatIfRun run = new WhatIfRun(study, evaluator.evaluate(StudyCompiler.compile(study)), 2, Optional.empty());
        Console console = new Console(folder, new PrintStream(out), new PrintStream(err), evaluator);
        assertThrows(DrawFailedException.class, () -> WhatIfVerb.workOut(run, UnitSystem.US, folder.resolve("out"), console));
        assertTrue(Files.exists(folder.resolve("out/tornado.csv")));
    }

    private SavedRun keep(Study study) throws Exception {
        study.getWhatIf().setDraws(10);
        StudyFile.save(study, folder.resolve(STUDY));
        WhatIfRun run = new WhatIfRun(study, new StudyEvaluator().evaluate(StudyCompiler.compile(study)), 2, Optional.empty());
        run.run(Progress.NONE, soFar -> {});
        WhatIfFile.write(run.saved(), WhatIfFile.beside(folder.resolve(STUDY)));
        return run.saved();
    }

    /** What is kept is told without running it; after an edit with what has changed, and no document takes it for its own. */
    @Test
    void whatIsKeptIsToldWithWhatHasChangedSince() throws Exception {
        Study study = example();
        SavedRun kept = keep(study);
        assertEquals(0, run("what-if", STUDY, "--out", "out", "--kept"), err.toString(StandardCharsets.UTF_8));
        String first = Files.readString(folder.resolve("out/what_if_summary.csv"));
        assertFalse(Files.exists(folder.resolve("out/what_if_changed_since.csv")));
        assertEquals("", err.toString(StandardCharsets.UTF_8));

        study.getSettings().setDiscountRate(0.07);
        StudyFile.save(study, folder.resolve(STUDY));
        assertEquals(0, run("what-if", STUDY, "--out", "later", "--kept"), err.toString(StandardCharsets.UTF_8));
        assertEquals(first, Files.readString(folder.resolve("later/what_if_summary.csv")));
        String changed = Files.readString(folder.resolve("later/what_if_changed_since.csv"));
        assertTrue(changed.lines().anyMatch(line -> line.endsWith(",7 %")), changed);
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("of an earlier version of the study. Changed since: "), err.toString());

        assertEquals(0, run("documents", STUDY, "--out", "papers", "--kind", "board", "--format", "csv"), err.toString(StandardCharsets.UTF_8));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("It is not in the documents."), err.toString());

        WhatIfFile.write(new SavedRun(kept.fingerprint(), kept.parts(), Optional.empty()), WhatIfFile.beside(folder.resolve(STUDY)));
        assertEquals(2, run("what-if", STUDY, "--out", "never", "--kept"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("cannot be told any more; run it again."), err.toString());
    }

    @Test
    void whatIsNotKeptOrWouldHaveToRunIsRefused() throws Exception {
        StudyFile.save(example(), folder.resolve(STUDY));
        assertEquals(2, run("what-if", STUDY, "--out", "out", "--kept"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("No what-if is kept beside"), err.toString());
        assertEquals(2, run("what-if", STUDY, "--out", "out", "--kept", "--draws", "100"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("--draws cannot be given with --kept, which runs nothing."), err.toString());
    }

    @Test
    void whatCannotBeRunIsTold() throws Exception {
        Study study = example();
        StudyFile.save(study, folder.resolve(STUDY));
        assertEquals(2, run("what-if", STUDY, "--out", "out", "--draws", "5"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("--draws is “5”; it must be a whole number from 10 to 10000000."));
        study.getWhatIf().getInputs().clear();
        StudyFile.save(study, folder.resolve(STUDY));
        assertEquals(2, run("what-if", STUDY, "--out", "out"));
        assertTrue(err.toString(StandardCharsets.UTF_8).contains("which names no uncertain input"));
        assertFalse(Files.exists(folder.resolve("out")));
    }
}
