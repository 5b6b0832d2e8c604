package org.amberyard.batch;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.UpkeepYear;
import org.amberyard.report.TaskSheet;

/** Writes the tasks of one bus in one year of a plan as a page to print. */
final class TaskSheetVerb implements Verb {
    private static final String OUT = "--out";
    private static final int OPERANDS = 4;

    @Override
    public String name() {
        return "task-sheet";
    }

    @Override
    public String usage() {
        return "task-sheet STUDY PLAN BUS YEAR --out FILE";
    }

    @Override
    public String summary() {
        return "writes the shop's tasks of the bus BUS in the year YEAR of the plan PLAN as an HTML page to print";
    }

    @Override
    public Set<String> options() {
        return Set.of(OUT);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        List<String> operands = arguments.operands(OPERANDS, "a study, a plan, a bus and a year");
        Path file = arguments.path(OUT, console.folder());
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(arguments.studyOf(operands.get(0), console.folder()), console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        StudyResult result = evaluated.get().result();
        UpkeepYear year = year(result, operands);
        write(file, TaskSheet.html(result.input(), year));
        console.out().println("The tasks are in " + file);
        return ExitCode.DONE;
    }

    private static UpkeepYear year(StudyResult result, List<String> operands) throws WrongUse {
        PlanResult plan = PlanOperand.of(result, operands.get(1));
        int first = result.input().baseYear();
        String last = String.valueOf(first + result.input().years() - 1);
        Optional<UpkeepYear> found = plan.upkeep().stream()
                .filter(u -> u.record().vehicle().unit().equals(operands.get(2)))
                .filter(u -> String.valueOf(first + u.record().year()).equals(operands.get(3))).findFirst();
        return found.orElseThrow(() -> new WrongUse("BUS is “" + operands.get(2) + "” and YEAR is “" + operands.get(3)
                + "”, but no such bus is in the fleet then. Years go from " + first + " to " + last + "; buses of the plan: "
                + plan.upkeep().stream().map(u -> u.record().vehicle().unit()).distinct().collect(Collectors.joining(", "))
                + "."));
    }

    private static void write(Path file, String html) throws WrongUse, IOException {
        try {
            Files.writeString(file, html, StandardCharsets.UTF_8);
        } catch (FileSystemException e) {
            throw new WrongUse(OUT + " is " + file + ", which cannot be written"
                    + (e.getReason() == null ? "" : " (" + e.getReason() + ")") + "; choose another file.");
        }
    }
}
