package org.amberyard.workbench.narrative;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.eclipse.osgi.util.NLS;

/** Keeps with narratives what their figures were when they were copied or written into documents, as one edit. */
public final class GiveOut {

    /**
     * Figures of a narrative as it was given out.
     *
     * @param narrative the narrative
     * @param printed what stood in the place of each name
     */
    public record Given(Narrative narrative, Map<String, String> printed) {
    }

    private GiveOut() {
    }

    /**
     * Keeps the figures of texts that name any.
     *
     * @param source whose figures they are
     * @param day day of giving out
     */
    public static void keep(StudySession session, List<Given> given, FigureSource source, LocalDate day) {
        List<Given> named = given.stream().filter(g -> !g.printed().isEmpty()).toList();
        if (!named.isEmpty()) {
            session.execute(new Keeping(session.study(), named, source, day));
        }
    }

    private static final class Keeping extends ChangeCommand {
        private final List<Given> given;
        private final Plan plan;
        private final Programme programme;
        private final LocalDate day;

        Keeping(Study study, List<Given> given, FigureSource source, LocalDate day) {
            super(study);
            this.given = given;
            this.plan = study.getPlans().stream().filter(p -> source.plan().equals(p.getName())).findFirst().orElse(null);
            this.programme = source.programme().flatMap(name -> study.getProgrammes().stream().filter(p -> name.equals(p.getName())).findFirst())
                    .orElse(null);
            this.day = day;
            setLabel(given.size() == 1 ? NLS.bind(Messages.GiveOut_edit, given.get(0).narrative().getName()) : Messages.GiveOut_edits);
        }

        @Override
        protected void doExecute() {
            given.forEach(this::keep);
        }

        private void keep(Given of) {
            Narrative narrative = of.narrative();
            narrative.setGivenOutFor(plan);
            narrative.setGivenOutTo(programme);
            narrative.setGivenOutOn(day.toString());
            narrative.getGivenOut().clear();
            of.printed().forEach((name, printed) -> {
                GivenOutFigure figure = StudyFactory.eINSTANCE.createGivenOutFigure();
                figure.setFigure(name);
                figure.setPrinted(printed);
                narrative.getGivenOut().add(figure);
            });
        }
    }
}
