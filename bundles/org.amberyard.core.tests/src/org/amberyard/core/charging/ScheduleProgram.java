package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The least-cost problem as the linear programme it is, an unknown for each session and step, given to a library. */
final class ScheduleProgram {
    private final ExpressionsBasedModel model = new ExpressionsBasedModel();
    private double constantCost;

    /** Lowest cost of a month, money; not a number when it is infeasible. */
    static double lowestCost(MonthProblem month) {
        ScheduleProgram program = new ScheduleProgram();
        program.add(month, program.demands(month));
        return program.solve();
    }

    /** Lowest cost of a year, money, with each demand charge billed at least at a share of the year's highest demand. */
    static double lowestCost(List<MonthProblem> year, double[] ratchetShares) {
        ScheduleProgram program = new ScheduleProgram();
        List<Variable[]> billed = year.stream().map(program::demands).toList();
        List<Variable[]> peaks = new ArrayList<>();
        for (int month = 0; month < year.size(); month++) {
            Variable[] peak = new Variable[ratchetShares.length];
            for (int charge = 0; charge < peak.length; charge++) {
                peak[charge] = program.model.addVariable().lower(0).weight(0);
                program.notBelow(billed.get(month)[charge], 1, peak[charge]);
                for (Variable[] other : billed) {
                    program.notBelow(other[charge], ratchetShares[charge], peak[charge]);
                }
            }
            peaks.add(peak);
            program.add(year.get(month), peak);
        }
        return program.solve();
    }

    private void notBelow(Variable variable, double factor, Variable other) {
        model.addExpression().set(variable, 1).set(other, -factor).lower(0);
    }

    private Variable[] demands(MonthProblem month) {
        Variable[] demands = new Variable[month.demandPrices().length];
        for (int charge = 0; charge < demands.length; charge++) {
            demands[charge] = model.addVariable().lower(month.demandFloorsKw()[charge]).weight(month.demandPrices()[charge]);
        }
        return demands;
    }

    private void add(MonthProblem month, Variable[] demands) {
        for (StretchProblem stretch : month.stretches()) {
            List<List<Variable>> atStep = new ArrayList<>();
            List<List<List<Variable>>> atCabinet = new ArrayList<>();
            for (int step = 0; step < stretch.steps(); step++) {
                atStep.add(new ArrayList<>());
                atCabinet.add(new ArrayList<>());
                for (int cabinet = 0; cabinet < stretch.cabinetKw().length; cabinet++) {
                    atCabinet.get(step).add(new ArrayList<>());
                }
                constantCost += stretch.times() * stretch.pricePerKwh()[step] * stretch.baseKw()[step] * stretch.stepHours();
            }
            stretch.sessions().forEach(session -> add(stretch, session, atStep, atCabinet));
            limit(month, stretch, demands, atStep, atCabinet);
        }
    }

    private void add(StretchProblem stretch, Session session, List<List<Variable>> atStep,
            List<List<List<Variable>>> atCabinet) {
        Expression energy = model.addExpression().level(session.meterKwh());
        for (int place = session.fromStep(); place < session.toStep(); place++) {
            int step = place % stretch.steps();
            Variable kw = model.addVariable().lower(0).upper(session.limitKw() * session.share(place))
                    .weight(stretch.times() * stretch.pricePerKwh()[step] * stretch.stepHours());
            energy.set(kw, stretch.stepHours());
            atStep.get(step).add(kw);
            if (session.cabinet() != Session.OWN_POWER) {
                atCabinet.get(step).get(session.cabinet()).add(kw);
            }
        }
    }

    private void limit(MonthProblem month, StretchProblem stretch, Variable[] demands, List<List<Variable>> atStep,
            List<List<List<Variable>>> atCabinet) {
        for (int step = 0; step < stretch.steps(); step++) {
            for (int cabinet = 0; cabinet < stretch.cabinetKw().length; cabinet++) {
                sum(atCabinet.get(step).get(cabinet)).upper(stretch.cabinetKw()[cabinet]);
            }
            if (Double.isFinite(month.siteLimitKw())) {
                sum(atStep.get(step)).upper(Math.max(0, month.siteLimitKw() - stretch.baseKw()[step]));
            }
            for (int charge = 0; charge < demands.length; charge++) {
                if ((stretch.demandSets()[step] & 1 << charge) != 0) {
                    sum(atStep.get(step)).set(demands[charge], -1).upper(-stretch.baseKw()[step]);
                }
            }
        }
    }

    private Expression sum(List<Variable> variables) {
        Expression sum = model.addExpression();
        variables.forEach(variable -> sum.set(variable, 1));
        return sum;
    }

    private double solve() {
        Optimisation.Result result = model.minimise();
        return result.getState().isOptimal() ? result.getValue() + constantCost
                : result.getState().isFailure() ? Double.NaN : fail(result);
    }

    private static double fail(Optimisation.Result result) {
        throw new AssertionError("The library ends with " + result.getState());
    }
}
