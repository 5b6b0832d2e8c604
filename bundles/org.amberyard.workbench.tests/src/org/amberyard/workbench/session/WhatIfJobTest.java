package org.amberyard.workbench.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.junit.jupiter.api.Test;

/** However a what-if ends, the window hears of it. */
class WhatIfJobTest {
    private static final long LATER_MS = 60_000;

    private final BlockingQueue<WhatIfJob.Outcome> ended = new LinkedBlockingQueue<>();

    private WhatIfJob job() {
        Study study = StudyFactory.eINSTANCE.createStudy();
        return new WhatIfJob(new WhatIfJob.Asked(study, Optional.empty(), Optional.empty(), Optional.empty(), false), new WhatIfJob.Listener() {
            @Override
            public void found(WhatIfResults results, String fingerprint) {
                throw new AssertionError("nothing is to be found");
            }

            @Override
            public void ended(WhatIfJob.Outcome outcome) {
                ended.add(outcome);
            }
        });
    }

    @Test
    void aJobThatIsCancelledBeforeItBeginsIsOver() throws InterruptedException {
        WhatIfJob job = job();
        job.schedule(LATER_MS);
        assertTrue(job.cancel());
        assertEquals(new WhatIfJob.Outcome(Optional.empty(), false, ""), ended.poll(10, TimeUnit.SECONDS));
    }
}
