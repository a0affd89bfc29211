-- Crews, the people of a crew by the name or number the trainer gives, sessions, who was there, and what was answered.
create table crew (
  id      text primary key,
  name    text not null unique collate nocase,
  created text not null
) strict, without rowid;

create table crew_person (
  id   text primary key,
  crew text not null references crew (id) on delete cascade,
  name text not null collate nocase,
  unique (crew, name)
) strict, without rowid;

create table crew_session (
  id        text primary key,
  code      text not null unique,
  crew      text not null references crew (id) on delete cascade,
  title     text not null,
  language  text not null,
  beliefs   text not null, -- JSON: [topic/name], what was told
  quiz      text not null, -- JSON: the questions with their keys; empty for a talk alone
  open      integer not null, -- answers are taken
  held      text not null
) strict, without rowid;

create index crew_session_held on crew_session (crew, held);

create table crew_present (
  session text not null references crew_session (id) on delete cascade,
  person  text not null references crew_person (id) on delete cascade,
  primary key (session, person)
) strict, without rowid;

create table crew_answer (
  session  text not null references crew_session (id) on delete cascade,
  person   text not null references crew_person (id) on delete cascade,
  question integer not null,
  belief   text not null,
  chosen   integer not null,
  correct  integer not null,
  answered text not null,
  primary key (session, person, question)
) strict, without rowid;
