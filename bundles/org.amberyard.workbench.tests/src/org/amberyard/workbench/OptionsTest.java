package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Options;
import org.junit.jupiter.api.Test;

/** What is left of a choice when the options change. */
class OptionsTest {
    private static final Options ROUTES = Options.upTo(3, i -> "R" + i, 1);

    private static Optional<Chosen> picked(Options of, String name, int place) {
        return of.pick(Optional.of(new Chosen(name, place)));
    }

    @Test
    void aNameIsFoundAgainAtAnotherPlace() {
        assertEquals(Optional.of(new Chosen("R2", 2)), picked(ROUTES, "R2", 0));
    }

    @Test
    void aNewNameIsFoundAgainByItsPlace() {
        assertEquals(Optional.of(new Chosen("R0", 0)), picked(ROUTES, "old name", 0));
    }

    @Test
    void whatIsGoneGivesWayToWhatTheProgramPrefers() {
        assertEquals(Optional.of(new Chosen("R1", 1)), picked(ROUTES, "R9", 9));
        assertEquals(Optional.of(new Chosen("R1", 1)), ROUTES.pick(Optional.empty()));
    }

    @Test
    void withoutThePreferredOneTheFirstIsTaken() {
        assertEquals(Optional.of(new Chosen("R0", 0)), Options.upTo(3, i -> "R" + i, 7).pick(Optional.empty()));
        assertEquals(Optional.empty(), new Options(List.of(), 0).pick(Optional.of(new Chosen("R0", 0))));
    }
}
