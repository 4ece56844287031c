package dayglass.books;

import dayglass.cost.rental.RentalCharge.BlockUsed;
import java.util.List;
import java.util.StringJoiner;

/** The blocks of a hire in words; equal blocks that follow on each other are told once. */
final class BlockWords {
    private BlockWords() {}

    /** For example {@code 2 x 7 days at 720.00 from 2027-04-05; 1 extra day at 102.86 on 2027-04-19}. */
    static String of(List<BlockUsed> blocks) {
        StringJoiner words = new StringJoiner("; ");
        for (int first = 0; first < blocks.size(); ) {
            int count = 1;
            while (first + count < blocks.size() && follows(blocks.get(first), blocks.get(first + count), count)) {
                count++;
            }
            words.add(told(blocks.get(first), count));
            first += count;
        }
        return words.toString();
    }

    private static boolean follows(BlockUsed first, BlockUsed other, int blocksBefore) {
        return other.days() == first.days()
                && other.price().equals(first.price())
                && other.extraDay() == first.extraDay()
                && other.from().equals(first.from().plusDays((long) first.days() * blocksBefore));
    }

    private static String told(BlockUsed block, int count) {
        String length = (block.extraDay() ? "extra " : "") + (block.days() == 1 ? "day" : "days");
        String times = count == 1 ? "" : count + " x ";
        String since = block.days() == 1 && count == 1 ? " on " : " from ";
        return times + block.days() + " " + length + " at " + block.price().amount() + since + block.from();
    }
}
