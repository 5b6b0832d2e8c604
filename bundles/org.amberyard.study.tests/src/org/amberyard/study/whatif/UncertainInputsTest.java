package org.amberyard.study.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.amberyard.core.whatif.Convergence;
import org.amberyard.core.whatif.Draws;
import org.amberyard.core.whatif.Moments;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.InputCorrelation;
import org.amberyard.model.whatif.Sampling;
import org.amberyard.model.whatif.WhatifFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Draws of three inputs, two of which are correlated. */
class UncertainInputsTest {
    private static final int DRAWS = 800;
    private static final int SEEDS = 200;
    /** Student's 97.5th percentile of eight means over the normal one, from tables. */
    private static final double WIDENED = 2.365 / 1.960;

    private static Study study() throws StudyFileException {
        Study study = ExampleWhatIf.without(DRAWS);
        ExampleWhatIf.add(study, "Diesel price", "FuelPrice", "diesel", "pricePerL");
        ExampleWhatIf.add(study, "Bus price", "ElectricType", "Electric C 150", "purchasePrice");
        ExampleWhatIf.add(study, "Pack price", "PackPrice", "", "pricePerKwh");
        InputCorrelation pair = WhatifFactory.eINSTANCE.createInputCorrelation();
        pair.setFirst(study.getWhatIf().getInputs().get(0));
        pair.setSecond(study.getWhatIf().getInputs().get(1));
        pair.setRankCorrelation(0.7);
        study.getWhatIf().getCorrelations().add(pair);
        return study;
    }

    /** The mean scatters over seeds as its standard error says before it is widened, also where inputs are correlated. */
    @ParameterizedTest
    @EnumSource(Sampling.class)
    void theErrorOfAMeanOfCorrelatedInputsIsTheStatedOne(Sampling sampling) throws StudyFileException {
        Study study = study();
        study.getWhatIf().setSampling(sampling);
        double[] means = new double[SEEDS];
        double[] variances = new double[SEEDS];
        for (int seed = 0; seed < SEEDS; seed++) {
            study.getWhatIf().setSeed(seed);
            UncertainInputs inputs = new UncertainInputs(study);
            Convergence end = Convergence.of(results(inputs.draws(DRAWS)), inputs.replicates(), DRAWS).get(0);
            means[seed] = end.mean();
            variances[seed] = end.standardError() * end.standardError();
        }
        double stated = Math.sqrt(Moments.of(variances).mean());
        assertEquals(WIDENED, stated / Moments.of(means).sd(), 0.2, "stated " + stated);
    }

    private static double[] results(Draws draws) {
        return IntStream.range(0, DRAWS).mapToObj(draws::at).mapToDouble(x -> 10 * x[0] + 3 * x[1] + x[0] * x[1] - x[2] * x[2]).toArray();
    }

    /** A surface is fitted where its draws lie. */
    @Test
    void evaluationsToFitToAreCorrelatedAsDrawsAre() throws StudyFileException {
        Draws fitted = new UncertainInputs(study()).fitted(200);
        double[] first = IntStream.range(0, 200).mapToDouble(d -> fitted.at(d, 0)).toArray();
        double[] second = IntStream.range(0, 200).mapToDouble(d -> fitted.at(d, 1)).toArray();
        double[] apart = IntStream.range(0, 200).mapToDouble(d -> first[d] - second[d]).toArray();
        double together = 1 - Moments.of(apart).variance() / (Moments.of(first).variance() + Moments.of(second).variance());
        assertEquals(0.7, together, 0.05);
    }

    @Test
    void fewDrawsOfManyInputsAreOneSample() throws StudyFileException {
        Study study = study();
        assertEquals(8, new UncertainInputs(study).replicates());
        study.getWhatIf().setDraws(79);
        UncertainInputs few = new UncertainInputs(study);
        assertEquals(1, few.replicates());
        assertEquals(List.of(3, 3), List.of(few.draws(79).at(0).length, few.draws(79).at(78).length));
    }

    /** Two inputs are correlated, and one of them belongs to a group with the third: no two parts of the variance hold the same input. */
    @Test
    void inputsOfAGroupAreOnePart() throws StudyFileException {
        Study study = study();
        assertArrayEquals(new int[] {0, 0, 1}, new UncertainInputs(study).parts());
        study.getWhatIf().getInputs().get(1).setGroup("Purchases");
        study.getWhatIf().getInputs().get(2).setGroup(" Purchases");
        UncertainInputs inputs = new UncertainInputs(study);
        assertArrayEquals(new int[] {0, 0, 0}, inputs.parts());
        study.getWhatIf().getCorrelations().clear();
        assertArrayEquals(new int[] {0, 1, 1}, new UncertainInputs(study).parts());
        assertEquals(Map.of("Purchases", List.of(1, 2)), inputs.named());
    }

    /** So few rows that a sample of each eighth would tell nothing are one sample. */
    @Test
    void rowsForSharesComeFromSamplesWhereThereAreMany() throws StudyFileException {
        UncertainInputs inputs = new UncertainInputs(study());
        assertEquals(List.of(1, 8), List.of(inputs.indexSamples(255), inputs.indexSamples(256)));
    }
}
