package provingyard.ui;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import javafx.application.Platform;
import provingyard.call.Call;
import provingyard.call.CallReview;
import provingyard.call.CallSite;
import provingyard.diagnosis.Trust;
import provingyard.drill.Card;
import provingyard.drill.Dealer;
import provingyard.drill.Deck;
import provingyard.drill.Form;
import provingyard.scenario.Scenario;
import provingyard.study.Progress;

/**
 * Deals a session's cards behind the window, one after the other, as far ahead as there is time. Yards are made ready once
 * and kept for the session. What comes out is told on the window's thread.
 */
final class DrillDealing {

    /**
     * A card that can be played.
     *
     * @param call the call as the trainee finds it; null for an example
     * @param example the reference's way, looked at afterwards; null for others
     * @param yard the yard as it is to be seen, shared by the cards on it; null for an example
     */
    record Ready(Card card, Call call, CallReview example, YardModel yard) {}

    /** Steps until a card is ready. */
    private static final int STEPS = 4;

    private final Deck deck;
    private final long seed;
    private final Map<String, Scenario> sites = new LinkedHashMap<>();
    private final Map<String, Dealer> dealers = new HashMap<>();
    private final Map<String, YardModel> yards = new HashMap<>();
    private final Map<Integer, Optional<Ready>> dealt = new HashMap<>();
    private final Consumer<Throwable> failed;
    private final Runnable changed;
    private final ExecutorService work = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "drill-dealing");
        thread.setDaemon(true);
        thread.setPriority(Thread.MIN_PRIORITY);
        return thread;
    });
    private volatile boolean cancelled;
    private int at;
    private double share;

    /**
     * A dealing that has not begun.
     *
     * @param calls all service calls' sites
     * @param failed told on the window's thread what goes wrong
     * @param changed told on the window's thread that there is something new
     */
    DrillDealing(Deck deck, long seed, List<Scenario> calls, Consumer<Throwable> failed, Runnable changed) {
        this.deck = deck;
        this.seed = seed;
        this.failed = failed;
        this.changed = changed;
        calls.forEach(c -> sites.put(c.id(), c));
    }

    void begin() {
        for (int i = 0; i < deck.slots().size(); i++) {
            int index = i;
            work.execute(() -> deal(index));
        }
    }

    Deck deck() {
        return deck;
    }

    /** A card by its place from 0: null while it is not dealt, empty where none could be. */
    Optional<Ready> dealt(int index) {
        return dealt.get(index);
    }

    /** How far a card is, 0 to 1. */
    double share(int index) {
        return dealt.containsKey(index) ? 1 : index == at ? share : 0;
    }

    private void deal(int index) {
        if (cancelled) {
            return;
        }
        try {
            tell(index, 0);
            Optional<Ready> ready = ready(index);
            Platform.runLater(() -> {
                if (!cancelled) {
                    dealt.put(index, ready);
                    changed.run();
                }
            });
        } catch (CancellationException e) {
            // Whoever cancelled is on another screen by now.
            cancelled = true;
        } catch (RuntimeException | Error e) {
            Platform.runLater(() -> {
                if (!cancelled) {
                    dealt.put(index, Optional.empty());
                    failed.accept(e);
                    changed.run();
                }
            });
        }
    }

    private void tell(int index, double part) {
        if (cancelled) {
            throw new CancellationException();
        }
        Platform.runLater(() -> {
            at = index;
            share = part / STEPS;
            changed.run();
        });
    }

    /** Dealt on the yard that was planned, else on another one of the session, else on any. */
    private Optional<Ready> ready(int index) {
        Deck.Slot slot = deck.slots().get(index);
        Set<String> may = new LinkedHashSet<>(List.of(slot.yard()));
        deck.slots().forEach(s -> may.add(s.yard()));
        may.addAll(sites.keySet());
        for (String yard : may) {
            Dealer dealer = dealer(index, yard);
            tell(index, 2);
            Optional<Card> card = dealer.deal(deck, slot, seed);
            if (card.isPresent()) {
                return Optional.of(ready(index, yard, card.get()));
            }
        }
        return Optional.empty();
    }

    private Dealer dealer(int index, String yard) {
        if (!dealers.containsKey(yard)) {
            CallSite site = CallSite.of(sites.get(yard));
            tell(index, 1);
            dealers.put(yard, new Dealer(site));
        }
        return dealers.get(yard);
    }

    private Ready ready(int index, String yard, Card dealt) {
        Card card = dealt.saying(DrillWords.complaint(dealt.site(), dealt.seen()));
        tell(index, 3);
        if (card.slot().form() == Form.EXAMPLE) {
            return new Ready(card, null, CallReview.of(card.example(), card.reference(), Trust.USUAL), null);
        }
        return new Ready(card, card.begin(), null, yard(index, yard));
    }

    private YardModel yard(int index, String id) {
        YardModel known = yards.get(id);
        if (known == null) {
            known = CallOpening.yard(sites.get(id), watched(index), e -> Platform.runLater(() -> failed.accept(e)));
            yards.put(id, known);
        }
        return known;
    }

    private Progress watched(int index) {
        return new Progress() {
            @Override
            public void at(int done, int of) {
                tell(index, 3 + (of == 0 ? 0 : done / (double) of));
            }

            @Override
            public boolean cancelled() {
                return cancelled;
            }
        };
    }

    /** Stops dealing and gives all yards up. */
    void close() {
        cancelled = true;
        if (!work.isShutdown()) {
            // After what is being done, on the thread that knows the yards.
            work.execute(() -> yards.values().forEach(YardModel::close));
            work.shutdown();
        }
    }
}
