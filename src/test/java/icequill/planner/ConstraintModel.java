package icequill.planner;

import icequill.work.DustLevel;
import icequill.work.MachineState;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.BoolVar;
import org.chocosolver.solver.variables.IntVar;

/** The same question put to a constraint solver: a start for each task, and who is at it. It shares nothing with the search. */
public final class ConstraintModel {

    private final VisitWork work;
    private final int crew;
    private final Model model = new Model();
    private final List<IntVar> starts = new ArrayList<>();
    private final List<BoolVar[]> people = new ArrayList<>();
    private final IntVar end;

    /** @param horizon minutes within which everything must be done */
    public ConstraintModel(VisitWork work, int crew, int horizon) {
        this(work, new Crew(crew), horizon);
    }

    ConstraintModel(VisitWork work, Crew people, int horizon) {
        this.work = work;
        crew = people.size();
        end = model.intVar("end", 0, horizon, true);
        for (MachineTask task : work.tasks()) {
            IntVar start = model.intVar(0, horizon, true);
            BoolVar[] who = model.boolVarArray(crew);
            starts.add(start);
            this.people.add(who);
            for (int person = 0; person < crew; person++) {
                if (!people.isFit(person, task.needs())) {
                    model.arithm(who[person], "=", 0).post();
                }
            }
            model.sum(who, "=", task.attended() == 0 ? 0 : task.people()).post();
            model.arithm(end, "-", start, ">=", whole(task)).post();
        }
        for (int i = 0; i < starts.size(); i++) {
            timer(i);
            for (int j = 0; j < starts.size(); j++) {
                pair(i, j);
            }
        }
        work.neverBothOff().forEach(pair -> apart(off(pair.one()), off(pair.other())));
    }

    /** The least end; -1 when there is none within the horizon. */
    public int shortest() {
        model.getSolver().setSearch(
                Search.domOverWDegSearch(people.stream().flatMap(Arrays::stream).toArray(BoolVar[]::new)),
                Search.inputOrderLBSearch(starts.toArray(IntVar[]::new)), Search.inputOrderLBSearch(end));
        Solution best = model.getSolver().findOptimalSolution(end, false);
        return best == null ? -1 : best.getIntVal(end);
    }

    private static int whole(MachineTask task) {
        return task.attended() + Math.max(task.unattended(), task.timer().map(timer -> timer.least()).orElse(0));
    }

    private MachineTask task(int i) {
        return work.tasks().get(i);
    }

    private Constraint after(int later, int earlier, int minutes) {
        return model.arithm(starts.get(later), "-", starts.get(earlier), ">=", minutes);
    }

    private void timer(int pour) {
        task(pour).timer().ifPresent(timer -> IntStream.range(0, starts.size())
                .filter(i -> task(i).machine().equals(task(pour).machine()) && task(i).flushes()
                        && task(i).order() > task(pour).order())
                .boxed().min(Comparator.comparingInt(i -> task(i).order())).ifPresent(flush -> model
                        .arithm(starts.get(flush), "-", starts.get(pour), "<=", timer.most()).post()));
    }

    private void pair(int i, int j) {
        boolean sameMachine = task(i).machine().equals(task(j).machine());
        if (sameMachine && task(i).order() < task(j).order()) {
            after(j, i, task(j).state() == MachineState.ANY ? task(i).attended() : whole(task(i))).post();
        } else if (i < j && !(sameMachine && task(i).order() > task(j).order())) {
            int walk = walk(i, j);
            Constraint either = model.or(after(j, i, task(i).attended() + walk),
                    after(i, j, task(j).attended() + walk));
            BoolVar apart = either.reify();
            for (int person = 0; person < crew; person++) {
                model.addClausesBoolOrArrayEqualTrue(
                        new BoolVar[]{apart, people.get(i)[person].not(), people.get(j)[person].not()});
            }
            if (sameMachine && task(i).state() != task(j).state() && task(i).state() != MachineState.ANY
                    && task(j).state() != MachineState.ANY) {
                apart(List.of(i), List.of(j));
            }
        }
        if (!sameMachine && task(i).dust() == DustLevel.RAISES && task(j).dust() == DustLevel.SPOILED
                && walk(i, j) == 0) {
            apart(List.of(i), IntStream.range(0, starts.size()).filter(
                    k -> task(k).machine().equals(task(j).machine()) && task(k).dust() == DustLevel.SPOILED).boxed()
                    .toList());
        }
    }

    private int walk(int i, int j) {
        List<String> machines = work.walks().machines();
        return work.walks().between(machines.indexOf(task(i).machine()), machines.indexOf(task(j).machine()));
    }

    /** All of one before any of the other, or the other way round. */
    private void apart(List<Integer> one, List<Integer> other) {
        BoolVar first = model.boolVar();
        for (int i : one) {
            for (int j : other) {
                model.ifThenElse(first, after(j, i, whole(task(i))), after(i, j, whole(task(j))));
            }
        }
    }

    private List<Integer> off(String machine) {
        List<Integer> stops = at(machine).filter(i -> task(i).state() == MachineState.CIRCULATING
                || task(i).state() == MachineState.DE_ENERGIZED).boxed().toList();
        int last = stops.stream().mapToInt(i -> task(i).order()).max().orElse(0);
        int first = stops.stream().mapToInt(i -> task(i).order()).min().orElse(0);
        int restart = at(machine).filter(i -> task(i).state() == MachineState.MAKING_ICE && task(i).order() > last)
                .map(i -> task(i).order()).min().orElse(last);
        return stops.isEmpty()
                ? List.of()
                : at(machine).filter(i -> task(i).order() >= first && task(i).order() <= restart).boxed().toList();
    }

    private IntStream at(String machine) {
        return IntStream.range(0, starts.size()).filter(i -> task(i).machine().equals(machine));
    }
}
