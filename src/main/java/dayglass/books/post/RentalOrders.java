package dayglass.books.post;

import dayglass.books.entry.Posted;
import dayglass.desk.rental.OrdersInBooks;
import dayglass.desk.rental.Rental;

/** Which commitment was posted for which line of a rental. */
public interface RentalOrders extends OrdersInBooks {
    /** Keeps what a commitment is for; the database refuses a second one that stands for the line. */
    void isFor(Posted commitment, Rental.Id rental, int line);
}
