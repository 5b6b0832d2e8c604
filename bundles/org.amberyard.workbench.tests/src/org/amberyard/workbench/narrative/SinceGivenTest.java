package org.amberyard.workbench.narrative;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.report.papers.NarrativeFacts;
import org.amberyard.report.papers.NarrativeFilling;
import org.junit.jupiter.api.Test;

class SinceGivenTest {
    private static String words(String day, NarrativeFilling.Change... changes) {
        FigureSource source = new FigureSource("Electric", Optional.empty());
        return new SinceGiven(new NarrativeFacts("Need", "{routes}", source, day, Map.of("routes", "17")), List.of(changes), List.of()).words();
    }

    @Test
    void aDayThatIsNotKnownIsNotTold() {
        assertEquals("No figure has changed since the text was given out on 2026-09-15 for “Electric”.", words("2026-09-15"));
        assertEquals("No figure has changed since the text was given out for “Electric”.", words(""));
        NarrativeFilling.Change change = new NarrativeFilling.Change("routes", "17", "18");
        assertEquals("Changed since the text was given out on 2026-09-15 for “Electric”: routes: 17 → 18.", words("2026-09-15", change));
        assertEquals("Changed since the text was given out for “Electric”: routes: 17 → 18.", words("", change));
    }
}
