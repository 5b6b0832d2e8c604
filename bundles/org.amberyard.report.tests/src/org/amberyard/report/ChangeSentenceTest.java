package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.amberyard.charts.Figures;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

class ChangeSentenceTest {

    private static final Pattern PART = Pattern.compile("([+−])([\\d,.]+) ");

    private final StudyInput study = SampleDistrict.small();
    private final StudyResult before = SampleDistrict.evaluated(study);

    private StudyResult evaluated(String currency, double discountRate) {
        MoneyRules rules = new MoneyRules(MoneyRates.ofNominal(discountRate, study.money().rates().inflation()), study.money().basis(),
                study.money().midYear());
        return SampleDistrict.evaluatedAfresh(new StudyInput(study.name(), currency, study.baseYear(), study.years(), rules,
                study.duty(), study.types(), study.buses(), study.depot(), study.prices(), study.funding(), study.air(),
                study.rules(), study.plans(), study.baseline(), study.trips()));
    }

    @Test
    void thePartsMakeTheWhole() {
        StudyResult after = evaluated("USD", 0.12);
        double change = after.plans().get(1).measures().presentCost() - before.plans().get(1).measures().presentCost();

        String words = ChangeSentence.of(before, after, 1, ChangeSentence.Cause.LAST_EDIT).orElseThrow();

        assertTrue(words.startsWith("By the last edit “" + after.plans().get(1).name() + "” costs "
                + Figures.exactMoney("USD", Math.abs(change)) + (change > 0 ? " more: " : " less: ")), words);
        double sum = 0;
        for (Matcher part = PART.matcher(words); part.find();) {
            sum += (part.group(1).equals("+") ? 1 : -1) * Double.parseDouble(part.group(2).replace(",", ""));
        }
        assertEquals(change, sum, 3, words);
        assertTrue(words.endsWith(" other."), words);
    }

    @Test
    void whatChangesNothingIsSaidToChangeNothing() {
        assertEquals("The last edit left the cost of “" + before.plans().get(1).name() + "” as it was.",
                ChangeSentence.of(before, before, 1, ChangeSentence.Cause.LAST_EDIT).orElseThrow());
        assertEquals("This left the cost of “" + before.plans().get(1).name() + "” as it was.",
                ChangeSentence.of(before, before, 1, ChangeSentence.Cause.THIS).orElseThrow());
    }

    @Test
    void otherMoneyIsNotCompared() {
        assertEquals(Optional.empty(), ChangeSentence.of(before, evaluated("CAD", 0.12), 1, ChangeSentence.Cause.LAST_EDIT));
    }
}
