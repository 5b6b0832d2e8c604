package org.amberyard.workbench.narrative;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.GivenOutFigure;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.workbench.session.Keeping;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/** Keeps with narratives what their figures were when they were copied or written into documents. That is no edit, and no undo takes it back. */
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
            session.keep(new Figures(session.study(), named, source, day));
        }
    }

    private static final class Figures implements Keeping {
        private final List<Given> given;
        private final Optional<Plan> plan;
        private final Optional<Programme> programme;
        private final LocalDate day;

        Figures(Study study, List<Given> given, FigureSource source, LocalDate day) {
            this.given = given;
            this.plan = study.getPlans().stream().filter(p -> source.plan().equals(p.getName())).findFirst();
            this.programme = source.programme().flatMap(name -> study.getProgrammes().stream().filter(p -> name.equals(p.getName())).findFirst());
            this.day = day;
        }

        @Override
        public String label() {
            return given.size() == 1 ? NLS.bind(Messages.GiveOut_one, given.get(0).narrative().getName()) : Messages.GiveOut_several;
        }

        /** A plan or programme that is not in the study at the moment is not named, as deleting it leaves it. */
        @Override
        public void write() {
            Plan ofPlan = plan.filter(Figures::isThere).orElse(null);
            Programme toProgramme = programme.filter(Figures::isThere).orElse(null);
            given.forEach(g -> write(g, ofPlan, toProgramme));
        }

        private static boolean isThere(EObject element) {
            return element.eContainer() != null;
        }

        private void write(Given of, Plan ofPlan, Programme toProgramme) {
            Narrative narrative = of.narrative();
            narrative.setGivenOutFor(ofPlan);
            narrative.setGivenOutTo(toProgramme);
            narrative.setGivenOutOn(day.toString());
            if (!of.printed().equals(printed(narrative))) {
                narrative.getGivenOut().clear();
                of.printed().forEach((name, printed) -> narrative.getGivenOut().add(figure(name, printed)));
            }
        }

        private static Map<String, String> printed(Narrative narrative) {
            return narrative.getGivenOut().stream().collect(Collectors.toMap(GivenOutFigure::getFigure, GivenOutFigure::getPrinted, (a, b) -> b));
        }

        private static GivenOutFigure figure(String name, String printed) {
            GivenOutFigure figure = StudyFactory.eINSTANCE.createGivenOutFigure();
            figure.setFigure(name);
            figure.setPrinted(printed);
            return figure;
        }
    }
}
