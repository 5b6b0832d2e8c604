package org.amberyard.benchmarks;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.IntStream;
import org.amberyard.core.charging.MonthProblem;
import org.amberyard.core.charging.Session;
import org.amberyard.core.charging.StretchProblem;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Variable;

/** A least-cost month as a general linear programme for a library: the yardstick of the charging benchmarks. */
final class LibraryProgram {
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();

    /** Lowest cost of charging, the fixed load's energy left out. */
    static double lowestCost(MonthProblem month) {
        LibraryProgram program = new LibraryProgram();
        Variable[] demands = IntStream.range(0, month.demandPrices().length).mapToObj(charge -> program.model.addVariable()
                .lower(month.demandFloorsKw()[charge]).weight(month.demandPrices()[charge])).toArray(Variable[]::new);
        month.stretches().forEach(stretch -> program.add(stretch, demands));
        return program.model.minimise().getValue();
    }

    private void add(StretchProblem stretch, Variable[] demands) {
        Map<Integer, Expression> loads = new HashMap<>();
        Map<String, Expression> cabinetLoads = new HashMap<>();
        for (Session session : stretch.sessions()) {
            Expression energy = model.addExpression().level(session.meterKwh());
            for (int place = session.fromStep(); place < session.toStep(); place++) {
                int step = place % stretch.steps();
                Variable kw = model.addVariable().lower(0).upper(session.limitKw())
                        .weight(stretch.times() * stretch.stepHours() * stretch.pricePerKwh()[step]);
                energy.set(kw, stretch.stepHours());
                loads.computeIfAbsent(step, s -> model.addExpression()).set(kw, 1);
                if (session.cabinet() >= 0) {
                    cabinetLoads.computeIfAbsent(session.cabinet() + " " + step,
                            c -> model.addExpression().upper(stretch.cabinetKw()[session.cabinet()])).set(kw, 1);
                }
            }
        }
        loads.forEach((step, load) -> {
            Variable total = model.addVariable();
            load.set(total, -1).level(-stretch.baseKw()[step]);
            for (int charge = 0; charge < demands.length; charge++) {
                if ((stretch.demandSets()[step] & 1 << charge) != 0) {
                    model.addExpression().set(demands[charge], 1).set(total, -1).lower(0);
                }
            }
        });
        IntStream.range(0, stretch.steps()).forEach(step -> IntStream.range(0, demands.length)
                .filter(charge -> (stretch.demandSets()[step] & 1 << charge) != 0)
                .forEach(charge -> demands[charge].lower(Math.max(demands[charge].getLowerLimit().doubleValue(),
                        stretch.baseKw()[step]))));
    }
}
