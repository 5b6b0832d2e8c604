package org.amberyard.batch;

import java.io.PrintStream;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.consumption.FitSettings;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.report.CurveChangeTable;
import org.amberyard.report.ResidualTable;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.CurveLogs;
import org.amberyard.study.CurveWords;
import org.amberyard.study.CurveWriter;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.FieldFormatException;

/** Fits the consumption curve of an electric type to the study's logs of it. */
final class FitCurveVerb implements Verb {
    private static final String RISE = "--rise";
    private static final String WRITE = "--write";

    @Override
    public String name() {
        return "fit-curve";
    }

    @Override
    public String usage() {
        return "fit-curve STUDY TYPE [--rise RISE] [--write]";
    }

    @Override
    public String summary() {
        return "fits the consumption curve of the electric type TYPE to its logs and prints it; RISE is the rise in the cold "
                + "where it is known; --write saves the curve in STUDY";
    }

    @Override
    public Set<String> options() {
        return Set.of(RISE);
    }

    @Override
    public Set<String> flags() {
        return Set.of(WRITE);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        Arguments.StudyAndName named = arguments.studyAndName(console.folder());
        Study study = StudyArgument.load(named.study());
        ElectricType type = type(study, named.name());
        CurveFitting fitting = CurveLogs.of(study, type).fit(settings(study, type, arguments.value(RISE)));
        print(fitting, console.out());
        if (fitting.fit().isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        if (arguments.has(WRITE)) {
            CurveWriter.write(fitting);
            StudyArgument.save(study, named.study());
            console.out().println("The curve is in " + named.study());
        }
        return ExitCode.DONE;
    }

    private static ElectricType type(Study study, String name) throws WrongUse {
        List<ElectricType> types = study.getVehicleTypes().stream().filter(ElectricType.class::isInstance)
                .map(ElectricType.class::cast).toList();
        Optional<ElectricType> named = types.stream().filter(t -> name.equals(t.getName())).findFirst();
        return named.orElseThrow(() -> new WrongUse("TYPE is “" + name + "”; it must be one of the electric types: "
                + types.stream().map(ElectricType::getName).collect(Collectors.joining(", ")) + "."));
    }

    private static FitSettings settings(Study study, ElectricType type, Optional<String> rise) throws WrongUse {
        try {
            return CurveFitting.settings(type, rise.isEmpty() ? OptionalDouble.empty() : rise(study, rise.get()));
        } catch (FieldFormatException | IllegalArgumentException e) {
            throw new WrongUse(e.getMessage());
        }
    }

    private static OptionalDouble rise(Study study, String typed) throws FieldFormatException {
        FieldFormat format = FieldFormat.of(VehiclesPackage.Literals.ELECTRIC_TYPE__CURVE_RISE_PER_K, study);
        return OptionalDouble.of((double) format.parse(typed));
    }

    private static void print(CurveFitting fitting, PrintStream out) {
        CurveWords.of(fitting).forEach(out::println);
        if (fitting.fit().isPresent()) {
            out.println();
            out.print(TextTable.of(CurveChangeTable.of(fitting)));
            out.println();
            out.print(TextTable.of(ResidualTable.of(fitting)));
        }
    }
}
