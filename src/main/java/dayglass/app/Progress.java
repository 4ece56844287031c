package dayglass.app;

import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/** Tells somebody who watches, from the second second on, that work goes on; silent where nobody does. */
final class Progress {
    private final Terminal terminal;
    private final Thread thread;
    private final AtomicInteger draws = new AtomicInteger();

    private Progress(Terminal terminal, String what) {
        this.terminal = terminal;
        this.thread = new Thread(() -> tell(what), "progress");
        thread.setDaemon(true);
    }

    static Progress start(Terminal terminal, String what) {
        Progress progress = new Progress(terminal, what);
        if (terminal.interactive()) {
            progress.thread.start();
        }
        return progress;
    }

    private void tell(String what) {
        long startedNanos = System.nanoTime();
        try {
            while (true) {
                TimeUnit.SECONDS.sleep(1);
                long seconds = TimeUnit.NANOSECONDS.toSeconds(System.nanoTime() - startedNanos);
                int done = draws.get();
                String drawn = done == 0 ? "" : ", " + done + " draws";
                terminal.err().print("\r" + TextLayout.cut(what, 60) + ": " + seconds + " s" + drawn + " ");
                terminal.err().flush();
            }
        } catch (InterruptedException e) {
            if (System.nanoTime() - startedNanos > TimeUnit.SECONDS.toNanos(1)) {
                terminal.err().print("\r" + " ".repeat(80) + "\r");
                terminal.err().flush();
            }
        }
    }

    /** So many draws are done; told from any thread. */
    void draws(int done) {
        draws.accumulateAndGet(done, Math::max);
    }

    /** Ends it and clears its line. */
    void end() {
        thread.interrupt();
        try {
            thread.join(1_000);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
