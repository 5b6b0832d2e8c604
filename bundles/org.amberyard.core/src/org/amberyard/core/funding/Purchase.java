package org.amberyard.core.funding;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.why.Derivation;

/**
 * A cost line that programmes may pay for. All money is of the year of purchase.
 *
 * @param kind what is bought
 * @param name what is bought, in words
 * @param row row of the ledger that bears it
 * @param year year of the study at whose start it is paid
 * @param count number of things bought
 * @param parts cost by part, each with how it comes about; of ports hardware first, then installation
 * @param bus what programmes ask about a bus; empty for other things
 * @param domesticContent true when the domestic content of a bus or port is declared, and for everything else
 * @param programmes places of the programmes that the plan names for it
 */
public record Purchase(Kind kind, String name, int row, int year, int count, List<Derivation> parts,
        Optional<NewBus> bus, boolean domesticContent, List<Integer> programmes) {

    /** What is bought. */
    public enum Kind {
        BUS("bus"), PORTS("ports"), SITE_WORK("site work"), TRAINING("training and tools");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        /** Name for tables. */
        public String label() {
            return label;
        }
    }

    public Purchase {
        parts = List.copyOf(parts);
        programmes = List.copyOf(programmes);
    }

    /** Cost that a programme covers. */
    public Derivation covered(Programme programme) {
        return Derivation.sum("Cost covered", Derivation.MONEY, IntStream.range(0, parts.size())
                .filter(i -> kind != Kind.PORTS || programme.offer().ports().covers().covers(i)).mapToObj(parts::get).toList());
    }

    /** Its cost: programmes together never pay more. */
    public double cost() {
        return parts.stream().mapToDouble(Derivation::value).sum();
    }
}
