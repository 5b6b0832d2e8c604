package org.amberyard.core.yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

class RecentAnswersTest {
    private static final int MOST = 3;

    private final RecentAnswers<Integer, String> answers = new RecentAnswers<>(MOST, answer -> 1);
    private final List<Integer> worked = new ArrayList<>();

    private String ask(int question) {
        return answers.to(question, () -> {
            worked.add(question);
            return "answer " + question;
        });
    }

    @Test
    void whatIsAskedAgainIsWorkedOutOnce() {
        assertEquals("answer 1", ask(1));
        assertEquals("answer 1", ask(1));
        assertEquals(List.of(1), worked);
    }

    @Test
    void theOldestAreForgottenAndTheLastKept() {
        for (int question = 0; question <= 2 * MOST + 1; question++) {
            ask(question);
        }
        worked.clear();
        for (int question = MOST + 1; question <= 2 * MOST + 1; question++) {
            ask(question);
        }
        assertEquals(List.of(), worked);
        ask(0);
        assertEquals(List.of(0), worked);
    }

    @Test
    void whatFailedIsWorkedOutAgain() {
        assertThrows(IllegalStateException.class, () -> answers.to(1, () -> {
            throw new IllegalStateException();
        }));
        assertEquals("answer 1", ask(1));
    }

    /** All questions of this map would wait for each other if answers were worked out inside it. */
    @Test
    void aLongAnswerHoldsUpNoOther() throws Exception {
        CountDownLatch begun = new CountDownLatch(1);
        CountDownLatch others = new CountDownLatch(1);
        CompletableFuture<String> slow = CompletableFuture.supplyAsync(() -> answers.to(0, () -> {
            begun.countDown();
            return await(others) ? "in time" : "too late";
        }));
        begun.await(10, TimeUnit.SECONDS);
        for (int question = 16; question <= 64; question += 16) {
            ask(question);
        }
        others.countDown();
        assertEquals("in time", slow.get(20, TimeUnit.SECONDS));
    }

    private static boolean await(CountDownLatch latch) {
        try {
            return latch.await(10, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
