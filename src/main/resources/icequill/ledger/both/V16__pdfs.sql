-- The files of papers, where the book is a server's and offices have folders of their own; a book that is a file leaves it empty.
CREATE TABLE paper_pdf (
    paper_id BIGINT PRIMARY KEY REFERENCES paper (id),
    pdf      ${bytes} NOT NULL
);
