package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NearWordsTest {
    private static final List<String> FUELS = List.of("diesel", "gasoline", "propane");

    /** A letter changed, left out, put in, or swapped with its neighbour is one slip. */
    @Test
    void slipsAreCounted() {
        assertEquals(0, NearWords.apart("Diesel", "diesel"));
        assertEquals(List.of(1, 1, 1, 1), List.of("diezel", "disel", "dieseel", "deisel").stream().map(w -> NearWords.apart(w, "diesel")).toList());
        assertEquals(3, NearWords.apart("kitten", "sitting"));
        assertEquals(6, NearWords.apart("", "diesel"));
    }

    @Test
    void theNearestIsMeantWhereOneIsNear() {
        assertEquals(Optional.of("diesel"), NearWords.nearest("Deisel", FUELS));
        assertEquals(Optional.of("gasoline"), NearWords.nearest("gasolin", FUELS));
        assertEquals(Optional.empty(), NearWords.nearest("electricity", FUELS));
        assertEquals(Optional.empty(), NearWords.nearest("B77", List.of("B07", "B76")), "numbers of buses are all alike");
        assertEquals(" Is “propane” meant?", NearWords.hint("propan", FUELS));
        assertEquals("", NearWords.hint("x", FUELS));
    }
}
